package headcourse.stock.pile;

/**
 * Looks for a choice within a cap for given numbers of stones: a short search first, then, where
 * that does not settle it, the bound by prices, and with them a longer search. Where that is not
 * enough either, the feet where a side may end are halved and each half is looked at by itself.
 */
final class PricedLook {
  private static final long NEVER = Long.MAX_VALUE / 4;

  private final PileTypes types;
  private final SweepBounds bounds;
  private final Pile.Cost cap;
  private final Effort effort;
  private final boolean halves;
  private PileDraft best;
  private boolean cutOff;
  private boolean complete = true;
  private long nextSawn = NEVER;
  private long nextImbalance = NEVER;
  private long steps;

  /**
   * @param bounds what is known of these numbers
   * @param cap the choice may cost no more
   */
  PricedLook(PileTypes types, SweepBounds bounds, Pile.Cost cap, Effort effort) {
    this.effort = effort;
    this.types = types;
    this.bounds = bounds;
    this.cap = cap;
    this.halves = cap.imbalance() < Long.MAX_VALUE / 16;
  }

  /** Looks; true where a choice within the cap was found. */
  boolean run(long limit) {
    bounds.ends(null, null);
    bounds.within(Math.min(cap.bearing(), Long.MAX_VALUE / 8));
    boolean found = sweep(null, Math.min(limit, effort.quick()));
    if (!found && cutOff && limit > effort.quick()) {
      cutOff = false;
      complete = true;
      if (halves && wide()) {
        found =
            look(
                limit,
                bounds.halved()
                    ? effort.patience()
                    : Math.max(effort.patience(), limit / effort.share()));
        bounds.halved(!cutOff);
      } else {
        found = look(limit, limit);
      }
    }
    bounds.ends(null, null);
    bounds.within(Math.min(cap.bearing(), Long.MAX_VALUE / 8));
    bounds.restart();
    bounds.givenUp(nextSawn, nextImbalance);
    return found;
  }

  /** Looks among the ends that the sides have now. */
  private boolean look(long limit, long patience) {
    if (!bounds.possible()) {
      return false;
    }
    if (bounds.floor() > cap.imbalance()) {
      givenUp(cap.sawn() + 1, bounds.floor());
      return false;
    }
    if (steps > limit) {
      cutOff = true;
      complete = false;
      return false;
    }
    int widest = halves ? widest() : -1;
    boolean before = complete;
    if (priced(limit, widest < 0 ? limit : patience)) {
      return true;
    }
    if (!cutOff || widest < 0 || steps > limit) {
      return false;
    }
    cutOff = false;
    complete = before;
    return split(widest, limit);
  }

  /** Bounds it by prices, and searches with them. */
  private boolean priced(long limit, long patience) {
    PiecePrices prices = new PiecePrices(types, bounds, cap, (limit - steps) / 4);
    boolean above = prices.above();
    steps += prices.steps();
    bounds.prices(prices.known());
    if (above) {
      givenUp(prices.sawn(prices.highest()), prices.imbalance(prices.highest()));
      return false;
    }
    return sweep(prices.full() ? null : prices, Math.min(limit - steps, patience));
  }

  private boolean split(int side, long limit) {
    long[] low = bounds.lows();
    long[] high = bounds.highs();
    RowShape row = bounds.sides()[side].row;
    long first = row.firstEnd();
    long last = row.lastEnd();
    long mid = first + (last - first) / 2;
    for (int half = 1; half >= 0; half--) {
      long[] from = low.clone();
      long[] to = high.clone();
      from[side] = half == 1 ? mid + 1 : first;
      to[side] = half == 1 ? last : mid;
      int h = side / 2;
      // The mirror image of sides under the same rules is looked at elsewhere.
      if (bounds.sameRules(h) && from[2 * h] > to[2 * h + 1]) {
        continue;
      }
      bounds.ends(from, to);
      bounds.within(Math.min(cap.bearing(), Long.MAX_VALUE / 8));
      if (look(limit, effort.patience())) {
        return true;
      }
    }
    return false;
  }

  /** Whether the ends leave sides so much to choose from that it tells on their stones. */
  private boolean wide() {
    int s = widest();
    if (s < 0) {
      return false;
    }
    RowShape row = bounds.sides()[s].row;
    Pile.Head head = bounds.sides()[s].pair.head();
    return effort.wide() * (row.lastEnd() - row.firstEnd()) > head.max() - head.min();
  }

  /** The side with the most ends to choose from, or −1. */
  private int widest() {
    int at = -1;
    long most = 0;
    for (SweepSide s : bounds.sides()) {
      long range = s.row.lastEnd() - s.row.firstEnd();
      boolean counts = s.pair.head().mirror() || cap.bearing() < Long.MAX_VALUE / 16;
      if (counts && range > most) {
        most = range;
        at = 2 * s.pair.h() + s.s;
      }
    }
    return at;
  }

  private boolean sweep(PiecePrices prices, long limit) {
    PileSweep sweep = new PileSweep(types, bounds, prices, cap, limit);
    boolean found = sweep.run();
    steps += sweep.steps();
    PileDraft draft = sweep.best();
    best =
        draft != null && (best == null || draft.cost().compareTo(best.cost()) < 0) ? draft : best;
    cutOff |= sweep.cutOff();
    complete &= !sweep.cutOff() && sweep.failed() == null;
    if (!sweep.cutOff()) {
      givenUp(bounds.nextSawn(), bounds.nextImbalance());
    }
    return found;
  }

  private void givenUp(long sawn, long imbalance) {
    nextSawn = Math.min(nextSawn, sawn);
    nextImbalance = Math.min(nextImbalance, imbalance);
  }

  /** The best choice come upon, within the cap or not, or null. */
  PileDraft best() {
    return best;
  }

  long steps() {
    return steps;
  }

  /** Whether the steps were used up. */
  boolean cutOff() {
    return cutOff;
  }

  /** Whether all was looked at. */
  boolean complete() {
    return complete;
  }
}
