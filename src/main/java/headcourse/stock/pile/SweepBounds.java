package headcourse.stock.pile;

import java.util.List;

/** What given numbers of stones must cost at least, while pieces are given to them. */
final class SweepBounds {
  private final PileTypes types;
  private final List<RowPair> pairs;
  private final SweepSide[] sides;
  private final CoverTable all;
  private final PairGaps[] gaps;
  private final int[] lead;
  private final int[] ranked;
  private final long alone;
  private final long[] low;
  private final long[] high;
  private PiecePrices.Known prices = PiecePrices.Known.NONE;
  private boolean halved;
  private long leastNeed;
  private long floor;
  private long bearing;
  private long settled;
  private long slack = Long.MAX_VALUE / 8;
  private long nextSawn;
  private long nextImbalance;

  /**
   * @param tables what all share
   * @param alone what is sawn off at least if each side had the pile to itself
   */
  SweepBounds(PileTypes types, List<RowPair> pairs, SweepTables tables, long alone) {
    this.alone = alone;
    this.types = types;
    this.pairs = pairs;
    this.all = tables.all();
    this.sides = new SweepSide[2 * pairs.size()];
    this.gaps = new PairGaps[pairs.size()];
    this.lead = new int[pairs.size()];
    this.ranked = new int[pairs.size()];
    for (RowPair p : pairs) {
      for (int s = 0; s < 2; s++) {
        sides[2 * p.h() + s] = new SweepSide(p, s, tables.side(p.h(), s), types.extra(p.h()));
      }
      gaps[p.h()] = tables.gaps(p.h());
      lead[p.h()] = p.lead();
      ranked[p.h()] = p.ranked(0) + p.ranked(1);
    }
    low = new long[sides.length];
    high = new long[sides.length];
    ends(null, null);
    within(Long.MAX_VALUE / 8);
  }

  /** Narrows to ends that go with what is sawn off in all. */
  void settle(long sawn) {
    within(Long.MAX_VALUE / 8);
    EndRange range = EndRange.of(sides, all, sawn);
    slack = range.slack();
    settled = range.bearing();
  }

  /** Narrows to ends whose bearings are off their targets by no more than this in all, pm. */
  void within(long most) {
    long all = 0;
    for (int i = 0; i < sides.length; i++) {
      SweepSide s = sides[i];
      s.row.within(Long.MAX_VALUE);
      s.row.between(Long.MIN_VALUE, Long.MAX_VALUE);
      long from = slack < Long.MAX_VALUE / 8 ? s.row.lastEnd() - slack / s.copies : Long.MIN_VALUE;
      s.row.between(Math.max(from, low[i]), high[i]);
      all += s.copies * s.row.leastOff();
    }
    bearing = Math.max(all, settled);
    leastNeed = 0;
    floor = 0;
    for (SweepSide s : sides) {
      int c = s.copies;
      s.row.within(s.row.leastOff() + Math.max(0, most - all) / c);
      s.measure();
      leastNeed += c * s.leastNeed();
      floor += s.s == 1 ? c * s.pair.floor() : 0;
    }
  }

  /** Lets the sides end between these feet only; null for anywhere. */
  void ends(long[] from, long[] to) {
    for (int i = 0; i < sides.length; i++) {
      low[i] = from == null ? Long.MIN_VALUE : from[i];
      high[i] = to == null ? Long.MAX_VALUE : to[i];
    }
  }

  long[] lows() {
    return low.clone();
  }

  long[] highs() {
    return high.clone();
  }

  List<RowPair> pairs() {
    return pairs;
  }

  SweepSide[] sides() {
    return sides;
  }

  /** Keeps the prices of the pieces for the next time. */
  void prices(PiecePrices.Known of) {
    prices = of;
  }

  /** The prices kept. */
  PiecePrices.Known prices() {
    return prices;
  }

  /** Takes note whether something came of looking at fewer ends at a time. */
  void halved(boolean well) {
    halved = well;
  }

  /** Whether something came of it the last time. */
  boolean halved() {
    return halved;
  }

  /** Forgets what was given up so far. */
  void restart() {
    nextSawn = Long.MAX_VALUE / 4;
    nextImbalance = Long.MAX_VALUE / 4;
  }

  /** Takes note of a choice that was given up because it costs at least so much. */
  void givenUp(long sawn, long imbalance) {
    nextSawn = Math.min(nextSawn, sawn);
    nextImbalance = Math.min(nextImbalance, imbalance);
  }

  /** The least sawn off of all that was given up for that. */
  long nextSawn() {
    return nextSawn;
  }

  /** The least difference of the sides of all that was given up for that. */
  long nextImbalance() {
    return nextImbalance;
  }

  /** Whether all sides can end somewhere. */
  boolean possible() {
    for (SweepSide s : sides) {
      if (s.row.firstEnd() > s.row.lastEnd()) {
        return false;
      }
    }
    return slack >= 0;
  }

  /** Whether a head's rows are under the same rules, and may end at the same feet. */
  boolean alike(int h) {
    return sameRules(h) && low[2 * h] == low[2 * h + 1] && high[2 * h] == high[2 * h + 1];
  }

  /** Whether a head's rows are under the same rules. */
  boolean sameRules(int h) {
    RowPair p = pairs.get(h);
    return p.left().stones == p.right().stones
        && p.left().past == p.right().past
        && p.head().left().equals(p.head().right());
  }

  /** The least cost before any piece is given. */
  Pile.Cost root() {
    long sawn = Math.max(alone, sawn(0, 0));
    return new Pile.Cost(sawn, sawn >= CoverTable.NONE ? 0 : floor, bearing);
  }

  long floor() {
    return floor;
  }

  /** The differences up to the first type: stones without a partner are set against none. */
  long before(int h) {
    RowPair p = pairs.get(h);
    return p.head().mirror() ? p.head().copies() * Math.abs(p.lead()) * width(h, 0) : 0;
  }

  /** The differences from a type to the next. */
  long gap(int h, int t) {
    RowPair p = pairs.get(h);
    if (!p.head().mirror() || t + 1 == types.size()) {
      return 0;
    }
    int apart = 0;
    for (int s = 0; s < 2; s++) {
      SweepSide side = sides[2 * h + s];
      boolean set = side.apart && !side.lone && side.end() != null;
      apart += set ? 1 - 2 * s : 0;
    }
    return p.head().copies()
        * (Math.abs(ahead(h)) + Math.abs(apart))
        * (width(h, t + 1) - width(h, t));
  }

  /** What an end stone without a partner adds. */
  private long lone(int h, int t) {
    long sum = 0;
    for (int s = 0; s < 2; s++) {
      SweepSide side = sides[2 * h + s];
      if (side.lone) {
        boolean set = side.end() != null;
        sum += set ? side.covers(side.end().usable) : t < types.size() ? width(h, t) : 0;
      }
    }
    return sum;
  }

  private long width(int h, int t) {
    return sides[2 * h].covers(types.usable[t]);
  }

  private int ranked(SweepSide side) {
    return side.body.size() + (side.end() != null && !side.apart ? 1 : 0);
  }

  private int ahead(int h) {
    return ranked(sides[2 * h]) - ranked(sides[2 * h + 1]) - lead[h];
  }

  /** Whether a choice within a cap may come of it. */
  boolean open(int t, long usable, long forced, long gapsSoFar, Pile.Cost cap) {
    long sawn = sawn(t, usable);
    if (sawn > cap.sawn() || sawn >= CoverTable.NONE / 2) {
      nextSawn = sawn > cap.sawn() ? Math.min(nextSawn, sawn) : nextSawn;
      return false;
    }
    if (cap.imbalance() > Long.MAX_VALUE / 16) {
      return true;
    }
    if (floor > cap.imbalance() || bearing > cap.bearing()) {
      nextImbalance = Math.min(nextImbalance, Math.max(floor, cap.imbalance() + 1));
      return false;
    }
    long imbalance = gapsSoFar - (cap.sawn() - forced);
    for (int h = 0; h < pairs.size(); h++) {
      RowPair p = pairs.get(h);
      if (p.head().mirror()) {
        int to = ranked[h] - ranked(sides[2 * h]) - ranked(sides[2 * h + 1]);
        imbalance += p.head().copies() * (gaps[h].least(t, to, ahead(h)) + lone(h, t));
      }
    }
    if (imbalance > cap.imbalance()) {
      nextImbalance = Math.min(nextImbalance, imbalance);
      return false;
    }
    return true;
  }

  private long sawn(int t, long usable) {
    long next = t < types.size() ? types.usable[t] : 0;
    long sum = usable;
    long covered = 0;
    long room = 0;
    int stones = 0;
    int open = 0;
    for (SweepSide s : sides) {
      int c = s.copies;
      long least = s.least(t, next);
      if (least >= CoverTable.NONE / 2) {
        return CoverTable.NONE;
      }
      // A side that has nothing yet saws off no less than with the pile to itself.
      sum += s.sum() == 0 ? Math.max(c * least, s.row.alone()) : c * (least - s.sum());
      covered += c * s.sum();
      room += c * s.room();
      stones += c * s.missing();
      open += missing(s);
    }
    sum += open * next;
    long least =
        Math.max(all.least(t, stones, leastNeed - covered), all.shortest(t, stones) - room);
    long together = usable + open * next - covered + least;
    return Math.max(sum, together);
  }

  private static int missing(SweepSide s) {
    int n = s.end() == null ? 0 : s.end().missing();
    return n + (s.body.isEmpty() ? 0 : s.body.get(s.body.size() - 1).missing());
  }

  /** The least that a head's stones cost with these ends, if the pieces are so long in all. */
  Pile.Cost leaf(int h, long length, long left, long right) {
    RowPair p = pairs.get(h);
    int c = p.head().copies();
    SweepSide l = sides[2 * h];
    SweepSide r = sides[2 * h + 1];
    long need = p.left().need(left) + p.right().need(right);
    long imbalance = 0;
    if (p.head().mirror()) {
      long[] a = l.ranks();
      long[] b = r.ranks();
      int n = Math.max(a.length, b.length);
      long sum = Math.abs(l.apart() - r.apart());
      for (int i = 1; i <= n; i++) {
        long x = i <= a.length ? a[a.length - i] : 0;
        sum += Math.abs(x - (i <= b.length ? b[b.length - i] : 0));
      }
      imbalance = Math.max(p.floor(left, right), sum - (l.sum() + r.sum() - need));
      if (l.row.stones != r.row.stones) {
        SweepSide longer = l.row.stones > r.row.stones ? l : r;
        SweepSide other = longer == l ? r : l;
        long end = longer == l ? left : right;
        long lone = longer.lone(longer.row.stones - other.row.stones, end);
        long more = longer.row.widths(end) - other.row.widths(longer == l ? right : left);
        // The stones with partners make up for those without.
        imbalance = Math.max(imbalance, Math.max(lone, 2 * lone - more));
      }
    }
    return new Pile.Cost(
        length - c * need, c * imbalance, c * (p.left().off(left) + p.right().off(right)));
  }
}
