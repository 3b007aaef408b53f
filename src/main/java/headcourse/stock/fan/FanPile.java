package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import headcourse.stock.pile.PileSupply;
import java.util.ArrayList;
import java.util.List;

/**
 * A pile of measured pieces and the heads that are to be set from it, of which some may be fans: a
 * head may then have several places for its striking point, each with its own joint lines and ends.
 *
 * @param pieces the pieces
 * @param heads the heads
 */
public record FanPile(List<Pile.Piece> pieces, List<Head> heads) {
  /** Copies the lists. */
  public FanPile {
    pieces = List.copyOf(pieces);
    heads = List.copyOf(heads);
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
   * @param fans its striking points; one for an upright head
   */
  public record Head(
      int copies, boolean mirror, int eachSide, long min, long max, long jump, List<Fan> fans) {
    /** Copies the list. */
    public Head {
      fans = List.copyOf(fans);
    }
  }

  /**
   * A striking point.
   *
   * @param left the left side
   * @param right the right side
   * @param sawn what is sawn off the keys of all copies, ticks
   */
  public record Fan(PileSide left, PileSide right, long sawn) {
    PileSide side(int s) {
      return s == 0 ? left : right;
    }
  }

  /**
   * What the solver came to.
   *
   * @param fans by head: place of its striking point in the list; empty where nothing was found
   * @param stones the stones of each head and what they cost
   * @param floor what no choice costs less than, known before any was tried
   */
  public record Answer(List<Integer> fans, Pile.Answer stones, Pile.Cost floor) {
    /** Copies the list. */
    public Answer {
      fans = List.copyOf(fans);
    }

    Answer over(Pile.Cost other) {
      return new Answer(fans, stones, other);
    }
  }

  /** Whether there are pieces enough, and long enough in all, whatever stone each is taken for. */
  public boolean suffices() {
    List<PileSupply.Need> needs = new ArrayList<>();
    for (Head head : heads) {
      List<PileSide> left = head.fans().stream().map(f -> f.side(0)).toList();
      List<PileSide> right = head.fans().stream().map(f -> f.side(1)).toList();
      needs.add(
          new PileSupply.Need(head.copies(), head.min(), head.max(), head.eachSide(), left, right));
    }
    return PileSupply.suffices(pieces, needs);
  }
}
