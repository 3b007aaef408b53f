package headcourse.stock.pile;

import headcourse.stock.pile.PileDraft.Slot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Search for a choice that costs no more than a cap, for given numbers of stones: through the
 * pieces from the shortest to the longest, each left lying or given to a side of a head.
 *
 * <p>Longer pieces may always be taken to make wider stones, so that the widths of a row follow
 * from its pieces: in the order of their lengths each is as wide as its piece and the bound on
 * neighbours allow, and what is too much for the end is sawn off where it does most good. {@link
 * RowFitter} then puts them in a row.
 */
final class PileSweep {
  private static final int MEMORY = 250_000;

  /** So many places looked at count as a step. */
  private static final int PLACES = 6;

  private final PileTypes types;
  private final List<RowPair> pairs;
  private final SweepBounds bounds;
  private final SweepSide[] sides;
  private final long limit;
  private final Pile.Cost cap;
  private final int[] openIn;
  private final int[] missing;
  private final Map<SearchState, long[]> seen = new HashMap<>();
  private final PiecePrices prices;
  private long[] at;
  private long usable;
  private long forced;
  private long gaps;
  private long places;
  private long steps;
  private long failures;
  private Pile.Cost failed;
  private PileDraft best;
  private boolean found;

  /**
   * @param bounds what is known of these numbers
   * @param prices of the pieces, or null
   * @param cap the choice may cost no more
   * @param limit how many steps it may take
   */
  PileSweep(PileTypes types, SweepBounds bounds, PiecePrices prices, Pile.Cost cap, long limit) {
    this.prices = prices;
    this.at = prices == null ? null : prices.start();
    this.types = types;
    this.bounds = bounds;
    this.pairs = bounds.pairs();
    this.cap = cap;
    this.limit = limit;
    this.sides = bounds.sides();
    this.openIn = new int[pairs.size()];
    Arrays.fill(openIn, -1);
    this.missing = new int[pairs.size()];
  }

  /** Searches; true where a choice within the cap was found. */
  boolean run() {
    bounds.restart();
    for (int h = 0; h < pairs.size(); h++) {
      gaps += bounds.before(h);
    }
    if ((prices == null || at != null) && bounds.open(0, usable, forced, gaps, cap)) {
      go(0);
    }
    return found;
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
    return steps > limit;
  }

  /** The least that stones might cost which no order was found for; null where there are none. */
  Pile.Cost failed() {
    return failed;
  }

  private boolean done() {
    return found || steps > limit;
  }

  private void go(int t) {
    place();
    if (done()) {
      return;
    }
    if (complete()) {
      leaf();
      return;
    }
    if (t == types.size()) {
      return;
    }
    SearchState state = SweepKeys.of(t, bounds, openIn);
    long[] before = seen.get(state);
    if (before != null && (before[0] < usable || before[0] == usable && before[1] <= gaps)) {
      return;
    }
    long failuresBefore = failures;
    spread(t, types.count[t], 0);
    // Other stones of the same sums may stand where these can't.
    if (failuresBefore == failures && !done() && (before != null || seen.size() < MEMORY)) {
      seen.put(state, new long[] {usable, gaps});
    }
  }

  private boolean complete() {
    for (SweepSide s : sides) {
      if (s.missing() > 0) {
        return false;
      }
    }
    for (int o : openIn) {
      if (o >= 0) {
        return false;
      }
    }
    return true;
  }

  /** Gives pieces of a type to slots: by side its body, then its end stone. */
  private void spread(int t, int left, int first) {
    for (int slot = first; left > 0 && slot < 2 * sides.length; slot++) {
      SweepSide side = sides[slot / 2];
      int h = side.pair.h();
      if (!types.fits.get(t).get(h) || done()) {
        continue;
      }
      if (openIn[h] >= 0) {
        if (openIn[h] == slot) {
          close(t, left, slot, side);
        }
        continue;
      }
      boolean end = slot % 2 == 1;
      long c = side.covers(types.usable[t]);
      boolean takes =
          end
              ? side.takesEnd() && c >= side.pair.head().min()
              : side.takesBody() && side.takes(types.usable[t]);
      if (!takes) {
        continue;
      }
      if (bounds.alike(h) && side.s == 1 && untouched(sides[2 * h])) {
        // Two sides that are alike: the first stone goes left.
        continue;
      }
      int copies = side.pair.head().copies();
      Batch b = new Batch(copies, t, types.usable[t]);
      long more = types.usable[t] - c;
      if (end) {
        side.setEnd(b);
      } else {
        side.push(b);
      }
      usable += types.usable[t];
      forced += more;
      openIn[h] = b.full() ? -1 : slot;
      step(t, left, b.full() ? slot : 4 * h, slot);
      openIn[h] = -1;
      forced -= more;
      usable -= types.usable[t];
      if (end) {
        side.clearEnd();
      } else {
        side.pop();
      }
    }
    if (!done()) {
      skip(t, left);
    }
  }

  private static boolean untouched(SweepSide side) {
    return side.body.isEmpty() && side.end() == null;
  }

  private void close(int t, int left, int slot, SweepSide side) {
    int h = side.pair.h();
    Batch b = open(h);
    b.add(t);
    long more = types.usable[t] - Math.min(b.usable, side.covers(b.usable));
    usable += types.usable[t];
    forced += more;
    openIn[h] = b.full() ? -1 : slot;
    step(t, left, b.full() ? 4 * h : slot, -1);
    openIn[h] = slot;
    forced -= more;
    usable -= types.usable[t];
    b.remove();
  }

  private void place() {
    places++;
    steps += places % PLACES == 0 ? 1 : 0;
  }

  /** Goes on after a piece was given to a slot, or to a stone begun before. */
  private void step(int t, int left, int from, int slot) {
    place();
    long[] was = at;
    if (!done() && passes(t, left, slot) && bounds.open(t, usable, forced, gaps, cap)) {
      spread(t, left - 1, from);
    }
    at = was;
  }

  /** Whether the prices leave anything once one more piece of a type is given. */
  private boolean passes(int t, int left, int slot) {
    if (prices == null) {
      return true;
    }
    at = prices.next(at, slot < 0 ? -1 : slot / 2, slot % 2 == 1);
    return at != null && mayCost(prices.first(t + 1) - left + 1);
  }

  private boolean mayCost(int u) {
    for (int h = 0; h < missing.length; h++) {
      missing[h] = openIn[h] < 0 ? 0 : open(h).missing();
    }
    long over = prices.over(at, u, usable, missing);
    if (over > 0) {
      bounds.givenUp(prices.sawn(over), prices.imbalance(over));
    }
    return over <= 0;
  }

  private Batch open(int h) {
    return sides[openIn[h] / 2].last(openIn[h] % 2 == 1);
  }

  private boolean skips(int left) {
    for (int i = 0; prices != null && at != null && i < left; i++) {
      at = prices.next(at, -1, false);
    }
    return prices == null || at != null;
  }

  private void skip(int t, int left) {
    long[] before = at;
    long was = gaps;
    for (int h = 0; h < pairs.size(); h++) {
      gaps += bounds.gap(h, t);
    }
    if (skips(left)
        && (prices == null || mayCost(prices.first(t + 1)))
        && bounds.open(t + 1, usable, forced, gaps, cap)) {
      go(t + 1);
    }
    gaps = was;
    at = before;
  }

  private void leaf() {
    Pile.Cost bound = Pile.Cost.NONE;
    List<HeadFit> fits = new ArrayList<>();
    List<Pile.Cost> least = new ArrayList<>();
    for (int h = 0; h < pairs.size(); h++) {
      HeadFit fit = new HeadFit(bounds, types, h);
      Pile.Cost c = fit.least();
      if (c == null) {
        return;
      }
      fits.add(fit);
      least.add(c);
      bound = bound.plus(c.sawn(), c.imbalance(), c.bearing());
    }
    if (bound.compareTo(cap) > 0) {
      bounds.givenUp(
          Math.max(bound.sawn(), cap.sawn() + 1), Math.max(bound.imbalance(), cap.imbalance() + 1));
      return;
    }
    Pile.Cost cost = Pile.Cost.NONE;
    List<List<List<Slot>>> rows = new ArrayList<>();
    boolean sure = true;
    for (int h = 0; h < pairs.size(); h++) {
      HeadFit fit = fits.get(h);
      Pile.Cost c = least.get(h);
      // What the others leave of the cap.
      Pile.Cost rest =
          cap.plus(
              c.sawn() - bound.sawn(),
              c.imbalance() - bound.imbalance(),
              c.bearing() - bound.bearing());
      fit.run(rest, limit - steps);
      steps += fit.steps();
      sure &= fit.sure();
      if (fit.cost() == null) {
        cost = null;
        break;
      }
      cost = cost.plus(fit.cost().sawn(), fit.cost().imbalance(), fit.cost().bearing());
      rows.add(fit.rows());
    }
    if (cost != null && (best == null || cost.compareTo(best.cost()) < 0)) {
      best = new PileDraft(rows, cost);
    }
    if (cost != null && cost.compareTo(cap) <= 0) {
      found = true;
      return;
    }
    failures++;
    bounds.givenUp(cap.sawn() + 1, cap.imbalance() + 1);
    if (!sure) {
      failed = failed == null || bound.compareTo(failed) < 0 ? bound : failed;
    }
  }
}
