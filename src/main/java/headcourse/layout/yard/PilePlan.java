package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.layout.HeadLayout;
import headcourse.layout.Proof;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.side.Choice;
import headcourse.layout.side.FlatHead;
import headcourse.layout.yard.FromStock.Moved;
import headcourse.layout.yard.FromStock.Taken;
import headcourse.layout.yard.rows.Cost;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

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
    List<Head> heads, List<Taken> taken, Cost cost, long least, boolean proved, long steps) {
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
    /** The head set out, for looking at its stones. */
    HeadLayout layout() {
      Proof none = new Proof(Proof.Status.OPTIMAL, 0, 0, 0);
      return made.build(left, right, none, List.of(), null);
    }

    /**
     * A head with stones that are cut.
     *
     * @param before as it was planned, or null
     */
    static FittedHead around(FlatHead head, List<Fitted> cut, Head before) {
      return before == null
          ? FittedHead.of(head, cut, null, null, null)
          : FittedHead.of(head, cut, before.layout(), before.left, before.right);
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
  List<Taken> of(String stone) {
    return taken.stream().filter(t -> t.stone().equals(stone)).toList();
  }

  /** Whether some head may be struck from elsewhere than was planned. */
  boolean struckFromEnd() {
    return heads.stream().anyMatch(h -> h.made().head().struckFromEnd());
  }

  private List<String> measured() {
    return heads.stream().flatMap(h -> h.made().fitted().stream()).map(Fitted::mark).toList();
  }

  /** Stones that a later plan cuts from another piece. */
  List<Moved> moved(PilePlan after) {
    List<String> cut = after.measured();
    List<Moved> out = new ArrayList<>();
    for (Taken t : taken) {
      // What is no stone any more stands among the stones that changed; a key may be ordered.
      boolean ordered = t.stone().endsWith("-K") && !cut.contains(t.stone());
      String to =
          after.of(t.stone()).stream()
              .filter(n -> n.copy() == t.copy())
              .map(Taken::piece)
              .findFirst()
              .orElse(ordered ? "" : t.piece());
      if (!to.equals(t.piece())) {
        out.add(new Moved(t.stone(), t.piece(), to));
      }
    }
    return out;
  }

  /**
   * How many stones, copies counted, have another size or piece in a later plan, are new there, or
   * are gone; those measured don't count.
   */
  int differing(PilePlan after) {
    List<String> cut = after.measured();
    Set<Taken> same = new HashSet<>(taken);
    same.retainAll(after.taken);
    return (int)
        Stream.concat(taken.stream(), after.taken.stream())
            .filter(t -> !same.contains(t) && !cut.contains(t.stone()))
            .map(t -> t.stone() + " " + t.copy())
            .distinct()
            .count();
  }
}
