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
    PileSweep sweep = new PileSweep(pile, types, limit / 2);
    long least = sweep.leastImbalance();
    // A stone without a partner counts whole.
    long lone = pile.heads().stream().mapToLong(Pile.Head::min).min().orElse(0);
    long known = 0;
    boolean sure = true;
    for (long cap = least; cap < lone && sure && sweep.best() == null; cap++) {
      known = cap;
      sweep.run(cap);
      sure = sweep.sure();
      if (!paired) {
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
