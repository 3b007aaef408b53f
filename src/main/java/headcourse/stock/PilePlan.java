package headcourse.stock;

import headcourse.job.HeadSpec;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Proof;
import headcourse.layout.Side;
import headcourse.layout.flat.Choice;
import headcourse.layout.flat.FittedHead;
import headcourse.stock.pile.Pile;
import java.util.ArrayList;
import java.util.List;

/**
 * Heads set from a pile as they stand at one time of the work: planned, then without spoiled
 * pieces, then around stones that are cut.
 *
 * @param heads the heads
 * @param taken which piece is which stone, keys and stones that are cut included
 * @param cost what the stones cost that are not cut yet
 * @param bound no choice with so few changes costs less
 * @param proved whether none is better
 * @param steps how many steps it took
 */
record PilePlan(
    List<Head> heads,
    List<FromStock.Taken> taken,
    Pile.Cost cost,
    Pile.Cost bound,
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

    HeadSpec.Key key() {
      return made.head().terms().head().key();
    }

    Choice on(Side side) {
      return side == Side.LEFT ? left : right;
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

  /** A choice from the pile of which nothing is cut or spoiled yet. */
  static PilePlan of(KeyedPile keyed) {
    List<Head> heads = new ArrayList<>();
    for (int k = 0; k < keyed.sides().size(); k++) {
      KeyedPile.Sides s = keyed.sides().get(k);
      Pile.Chosen c = keyed.answer().heads().get(k);
      heads.add(
          new Head(
              FittedHead.bare(s.head()),
              s.left().choice(c.left()),
              s.right().choice(c.right()),
              List.of(widths(c.left()), widths(c.right()))));
    }
    Pile.Answer a = keyed.answer();
    return new PilePlan(heads, keyed.taken(), a.cost(), a.bound(), a.proved(), a.steps());
  }

  static List<Long> widths(List<Pile.Picked> row) {
    return row.stream().map(Pile.Picked::width).toList();
  }

  /** The same, of which it is known that none is better. */
  PilePlan best(long steps) {
    return new PilePlan(heads, taken, cost, cost, true, steps);
  }

  /** Whether a piece is taken. */
  boolean takes(String piece) {
    return taken.stream().anyMatch(t -> t.piece().equals(piece));
  }

  /** The pieces that a stone is cut from, by copy; fewer where it is to be ordered. */
  List<FromStock.Taken> of(String stone) {
    return taken.stream().filter(t -> t.stone().equals(stone)).toList();
  }
}
