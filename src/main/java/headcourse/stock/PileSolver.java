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
  private static final int MORE = 16;

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
    Pile.Cost floor = new Pile.Cost(0, Math.min(known, lone), sweep.leastBearing());
    if (best == null) {
      SawBound saws = new SawBound(pile, types);
      steps += saws.work();
      best = new PileTrim(pile, types).find();
      PileDraft hand = new PileHand(pile, types).find();
      if (best == null || hand != null && hand.cost().compareTo(best.cost()) < 0) {
        best = hand;
      }
      long off = saws.least();
      if (off > SawBound.NONE / 2) {
        return new Pile.Answer(List.of(), null, floor, true, steps);
      }
      if (off > 0) {
        floor = new Pile.Cost(off, 0, saws.bearing(off));
      }
      SawnSearch sawn = new SawnSearch(pile, types, saws, best, (limit - steps) / 2);
      for (long k = Math.max(1, off);
          k < off + MORE && (sawn.best() == null || k <= sawn.best().cost().sawn());
          k++) {
        sawn.find(k);
      }
      best = sawn.best();
      steps += sawn.steps();
      proved = best != null && best.cost().equals(floor);
    }
    if (!proved) {
      Pile.Cost goal = bound(pile, types, floor);
      PileSearch search = new PileSearch(pile, types, best, goal, limit - steps);
      proved = search.run();
      best = search.best();
      steps += search.steps();
    }
    Pile.Cost bound = proved && best != null ? best.cost() : bound(pile, types, floor);
    return new Pile.Answer(
        best == null ? List.of() : best.chosen(types),
        best == null ? null : best.cost(),
        bound,
        proved,
        steps);
  }

  /** Or, where that is more, what must be sawn off pieces longer than any stone may be. */
  private static Pile.Cost bound(Pile pile, PileTypes types, Pile.Cost otherwise) {
    int stones = 0;
    for (Pile.Head head : pile.heads()) {
      for (int s = 0; s < 2; s++) {
        long run = head.side(s).firstEnd() - head.side(s).start();
        long each = head.max() + head.side(s).joint();
        stones += head.copies() * (int) Math.max(1, -Math.floorDiv(-run, each));
      }
    }
    long widest = 0;
    for (int h = 0; h < pile.heads().size(); h++) {
      widest = Math.max(widest, pile.heads().get(h).max() + types.extra(h));
    }
    long sawn = 0;
    int n = 0;
    // Types go from the shortest to the longest, and so does what is too much of them.
    for (int t = 0; t < types.size(); t++) {
      for (int k = 0; k < types.count[t] && n < stones; k++, n++) {
        sawn += Math.max(0, types.usable[t] - widest);
      }
    }
    return sawn <= otherwise.sawn() ? otherwise : new Pile.Cost(sawn, 0, 0);
  }

  private static boolean copies(Pile pile) {
    return pile.heads().stream().anyMatch(h -> h.copies() > 1);
  }
}
