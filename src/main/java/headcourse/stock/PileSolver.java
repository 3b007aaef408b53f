package headcourse.stock;

import java.util.List;

/**
 * Chooses the stones of heads from a pile of measured pieces: least length sawn off, then sides
 * most alike where they are to be, then bearings nearest their target.
 *
 * <p>First it looks for choices in which nothing is sawn off and every stone has a partner, at each
 * difference of the sides from the least possible on; the first that comes out is proved best when
 * all below it were looked at. Where that does not settle it, a complete search goes on until it
 * has seen all or its steps are used up.
 */
public final class PileSolver {
  private PileSolver() {}

  /**
   * Solves.
   *
   * @param pile pieces and heads
   * @param limit how many steps it may take
   */
  public static Pile.Answer solve(Pile pile, long limit) {
    PileTypes types = new PileTypes(pile);
    if (types.size() == 0 || pile.heads().isEmpty()) {
      boolean nothing = pile.heads().isEmpty();
      return new Pile.Answer(List.of(), nothing ? Pile.Cost.NONE : null, Pile.Cost.NONE, true, 0);
    }
    boolean paired = pile.heads().stream().anyMatch(Pile.Head::mirror);
    if (!paired) {
      PileDraft quick = new PileSwaps(pile, types).find();
      if (quick != null) {
        return new Pile.Answer(quick.chosen(types), quick.cost(), quick.cost(), true, 1);
      }
    }
    PileSweep sweep = new PileSweep(pile, types);
    long least = sweep.leastImbalance();
    // A stone without a partner counts whole.
    long lone = pile.heads().stream().mapToLong(Pile.Head::min).min().orElse(0);
    long known = 0;
    boolean sure = true;
    // A level that is cut off leaves the proof open; the next may still hold a good choice.
    for (long cap = least; cap < lone && sweep.best() == null; cap++) {
      known = sure ? cap : known;
      long rest = limit * 3 / 4 - sweep.steps();
      sweep.run(cap, Math.min(rest, limit / 8), false);
      if (!sweep.sure()) {
        // With a choice in hand this is the level that matters.
        sweep.run(cap, sweep.best() == null ? Math.min(rest, limit / 8) : rest, true);
      }
      sure &= sweep.sure();
      if (!paired || rest <= 0) {
        sure &= rest > 0;
        break;
      }
    }
    PileDraft best = sweep.best();
    boolean proved = best != null && sure && !(copies(pile) && types.twins());
    long steps = sweep.steps();
    if (!proved) {
      PileSearch search = new PileSearch(pile, types, best, limit - steps);
      proved = search.run();
      best = search.best();
      steps += search.steps();
    }
    Pile.Cost bound =
        proved && best != null
            ? best.cost()
            : new Pile.Cost(0, Math.min(known, lone), sweep.leastBearing());
    return new Pile.Answer(
        best == null ? List.of() : best.chosen(types),
        best == null ? null : best.cost(),
        bound,
        proved,
        steps);
  }

  private static boolean copies(Pile pile) {
    return pile.heads().stream().anyMatch(h -> h.copies() > 1);
  }
}
