package headcourse.stock;

/**
 * Looks for a choice within a cap for given numbers of stones: a short search first, then, where
 * that does not settle it, the bound by prices, and with them a longer search.
 */
final class PricedLook {
  private static final long QUICK = 2_000;

  private final PileTypes types;
  private final SweepBounds bounds;
  private final Pile.Cost cap;
  private PileSweep sweep;
  private boolean above;
  private long steps;

  PricedLook(PileTypes types, SweepBounds bounds, Pile.Cost cap) {
    this.types = types;
    this.bounds = bounds;
    this.cap = cap;
  }

  /** Looks; true where a choice within the cap was found. */
  boolean run(long limit) {
    boolean found = sweep(null, Math.min(limit, QUICK));
    if (found || !sweep.cutOff() || limit <= QUICK) {
      return found;
    }
    PiecePrices prices = new PiecePrices(types, bounds);
    above = prices.above(cap.sawn());
    steps += prices.steps();
    bounds.prices(prices);
    if (above) {
      bounds.restart();
      bounds.givenUp(prices.bound(), cap.imbalance() + 1);
      return false;
    }
    return sweep(prices.full() ? null : prices, limit - steps);
  }

  private boolean sweep(PiecePrices prices, long limit) {
    sweep = new PileSweep(types, bounds, prices, cap, limit);
    boolean found = sweep.run();
    steps += sweep.steps();
    return found;
  }

  /** The best choice come upon, within the cap or not, or null. */
  PileDraft best() {
    return sweep.best();
  }

  long steps() {
    return steps;
  }

  /** Whether the steps were used up. */
  boolean cutOff() {
    return !above && sweep.cutOff();
  }

  /** Whether all was looked at. */
  boolean complete() {
    return above || !sweep.cutOff() && sweep.failed() == null;
  }
}
