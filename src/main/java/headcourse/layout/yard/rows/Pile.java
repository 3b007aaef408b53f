package headcourse.layout.yard.rows;

import java.util.List;

/**
 * A pile of measured pieces and the heads that are to be set from it, in ticks of the job's grid.
 *
 * @param pieces the pieces
 * @param heads the heads
 * @param give how much may be sawn off beyond the least and still count as the least
 * @param ticketed whether stones were ticketed before, so that what changes counts first
 */
public record Pile(List<Piece> pieces, List<Head> heads, long give, boolean ticketed) {
  /** Copies the lists. */
  public Pile {
    pieces = List.copyOf(pieces);
    heads = List.copyOf(heads);
  }

  /**
   * One piece.
   *
   * @param usable its length less the clean cuts
   * @param fits by head: whether it is high, deep and thick enough for an ordinary stone
   * @param fitsKey the same for the key
   */
  public record Piece(long usable, List<Boolean> fits, List<Boolean> fitsKey) {
    /** Copies the lists. */
    public Piece {
      fits = List.copyOf(fits);
      fitsKey = List.copyOf(fitsKey);
    }

    boolean fits(int head, boolean key) {
      return (key ? fitsKey : fits).get(head);
    }
  }

  /**
   * A head.
   *
   * @param copies how many identical openings it stands over; each stone takes so many pieces
   * @param mirror whether the sides are to be alike
   * @param min least width
   * @param max greatest width
   * @param jump greatest difference between neighbours
   * @param ways its keys and striking points, of which one is taken
   */
  public record Head(int copies, boolean mirror, long min, long max, long jump, List<Way> ways) {
    /** Copies the list. */
    public Head {
      ways = List.copyOf(ways);
    }
  }

  /**
   * A key and what stands beside it.
   *
   * @param left the left side
   * @param right the right side
   * @param key length that the key takes of a piece, or −1 where it takes none from the pile
   * @param ticket the key as ticketed before, or null where it was not, or was another
   */
  public record Way(Row left, Row right, long key, Ticket ticket) {
    Row row(int side) {
      return side == 0 ? left : right;
    }
  }

  /**
   * One side beyond the stones that are there already.
   *
   * @param side where its stones may stand, or null where none may follow
   * @param mayEnd whether the stones that are there may make up the side
   * @param each how many stones must follow, or 0 where that is open
   * @param there widths of those that are there, outwards
   * @param tickets the stones that were ticketed to follow
   */
  public record Row(
      RowSide side, boolean mayEnd, int each, List<Long> there, List<Ticket> tickets) {
    /** Copies the lists. */
    public Row {
      there = List.copyOf(there);
      tickets = List.copyOf(tickets);
    }

    /** A side of which nothing is there and nothing was ticketed. */
    public static Row bare(RowSide side, int each) {
      return new Row(side, false, each, List.of(), List.of());
    }

    /** The stone ticketed at a place, from 1, or null. */
    Ticket ticket(int index) {
      return index <= tickets.size() ? tickets.get(index - 1) : null;
    }
  }

  /**
   * A stone as ticketed.
   *
   * @param width its width
   * @param pieces by copy: place of its piece in the pile's list, or −1 where that is gone
   * @param foot where its outer joint stood
   * @param pinned whether it is cut and must stay
   */
  public record Ticket(long width, List<Integer> pieces, long foot, boolean pinned) {
    /** Copies the list. */
    public Ticket {
      pieces = List.copyOf(pieces);
    }

    /** How many of its copies have lost their piece. */
    int gone() {
      return (int) pieces.stream().filter(p -> p < 0).count();
    }
  }
}
