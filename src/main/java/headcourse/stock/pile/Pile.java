package headcourse.stock.pile;

import java.util.List;

/**
 * A pile of measured pieces and the heads that are to be set from it, in ticks of the job's grid.
 *
 * @param pieces the pieces
 * @param heads the heads
 */
public record Pile(List<Piece> pieces, List<Head> heads) {
  /** Copies the lists. */
  public Pile {
    pieces = List.copyOf(pieces);
    heads = List.copyOf(heads);
  }

  /**
   * One piece.
   *
   * @param id its mark and number, as in C2#1
   * @param usable its arris less the clean cuts, ticks
   * @param fits by head: whether it is high, deep and thick enough
   */
  public record Piece(String id, long usable, List<Boolean> fits) {
    /** Copies the list. */
    public Piece {
      fits = List.copyOf(fits);
    }
  }

  /**
   * A head.
   *
   * @param copies how many identical openings it stands over; each stone takes so many pieces
   * @param mirror whether the sides are to be alike
   * @param eachSide how many stones a side, or 0 where that is open
   * @param min least width
   * @param max greatest width
   * @param jump greatest difference between neighbours
   * @param left left side
   * @param right right side
   */
  public record Head(
      int copies,
      boolean mirror,
      int eachSide,
      long min,
      long max,
      long jump,
      PileSide left,
      PileSide right) {
    /** The same, its sides free to differ. */
    Head plain() {
      return new Head(copies, false, eachSide, min, max, jump, left, right);
    }

    /** The same with stones no wider than this. */
    Head upTo(long widest) {
      return new Head(copies, mirror, eachSide, min, widest, jump, left, right);
    }

    public PileSide side(int s) {
      return s == 0 ? left : right;
    }
  }

  /**
   * What a choice costs: each counts only where those before it are equal.
   *
   * @param sawn length sawn off, ticks
   * @param imbalance difference of the sides, stone by stone, ticks; a stone without a partner
   *     counts whole; none where the sides need not be alike
   * @param bearing how far the bearings are from their target, pm
   */
  public record Cost(long sawn, long imbalance, long bearing) implements Comparable<Cost> {
    public static final Cost NONE = new Cost(0, 0, 0);

    /** More than any choice costs. */
    public static final Cost ANY =
        new Cost(Long.MAX_VALUE / 4, Long.MAX_VALUE / 4, Long.MAX_VALUE / 4);

    public Cost plus(long moreSawn, long moreImbalance, long moreBearing) {
      return new Cost(sawn + moreSawn, imbalance + moreImbalance, bearing + moreBearing);
    }

    @Override
    public int compareTo(Cost o) {
      int c = Long.compare(sawn, o.sawn);
      c = c != 0 ? c : Long.compare(imbalance, o.imbalance);
      return c != 0 ? c : Long.compare(bearing, o.bearing);
    }
  }

  /**
   * A stone of a head.
   *
   * @param width its width
   * @param pieces the pieces it is cut from, as places in the pile's list: one for each copy
   */
  public record Picked(long width, List<Integer> pieces) {
    /** Copies the list. */
    public Picked {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * The stones of a head.
   *
   * @param left outwards
   * @param right outwards
   */
  public record Chosen(List<Picked> left, List<Picked> right) {
    /** Copies the lists. */
    public Chosen {
      left = List.copyOf(left);
      right = List.copyOf(right);
    }
  }

  /**
   * What the solver came to.
   *
   * @param heads the stones of each head, or empty where nothing was found
   * @param cost what they cost, or null
   * @param bound no choice costs less
   * @param proved whether the choice is proved best; with no choice, whether there is none
   * @param steps how many steps it took
   */
  public record Answer(List<Chosen> heads, Cost cost, Cost bound, boolean proved, long steps) {
    /** Copies the list. */
    public Answer {
      heads = List.copyOf(heads);
    }
  }
}
