package headcourse.layout.yard;

import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Proof;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.side.Choice;
import headcourse.layout.yard.rows.Cost;
import java.util.List;

/**
 * Heads set from a pile as they stand at one time of the work: planned, then without spoiled
 * pieces, then around stones that are cut.
 *
 * @param heads the heads
 * @param taken which piece is which stone, keys and stones that are cut included
 * @param cost what the stones cost that are not cut yet
 * @param least no choice with so few changes saws off less, ticks
 * @param proved whether none is better
 * @param steps how many steps it took
 */
record PilePlan(
    List<Head> heads,
    List<FromStock.Taken> taken,
    Cost cost,
    long least,
    boolean proved,
    long steps) {
  /** Copies the lists. */
  PilePlan {
    heads = List.copyOf(heads);
    taken = List.copyOf(taken);
  }

  /**
   * A head.
   *
   * @param made the head with the stones that are cut
   * @param left its left side
   * @param right its right side
   * @param widths by side the widths of its stones outwards, those that are cut left out
   */
  record Head(FittedHead made, Choice left, Choice right, List<List<Long>> widths) {
    String mark() {
      return made.head().terms().opening().mark();
    }

    /** The head set out; without a proof of its own where that is not asked for. */
    HeadLayout layout(Proof proof, List<Remark> remarks, HeadLayout before) {
      return made.build(left, right, proof, remarks, before);
    }

    /** The head set out, for looking at its stones. */
    HeadLayout layout() {
      return layout(new Proof(Proof.Status.OPTIMAL, 0, 0, 0), List.of(), null);
    }
  }

  /** The same, of which it is not known whether it is best. */
  PilePlan unproved() {
    return new PilePlan(heads, taken, cost, least, false, steps);
  }

  /** Whether a piece is taken. */
  boolean takes(String piece) {
    return taken.stream().anyMatch(t -> t.piece().equals(piece));
  }

  /** The pieces that a stone is cut from, by copy; fewer where it is to be ordered. */
  List<FromStock.Taken> of(String stone) {
    return taken.stream().filter(t -> t.stone().equals(stone)).toList();
  }

  /** Whether some head may be struck from elsewhere than was planned. */
  boolean struckFromEnd() {
    return heads.stream().anyMatch(h -> h.made().head().struckFromEnd());
  }
}
