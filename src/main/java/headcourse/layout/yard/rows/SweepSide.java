package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A side of an upright head that gets so many stones. How long a stone is along its blank is its
 * width and what its place adds, so that what a side takes in all depends on its end only.
 */
final class SweepSide {
  final int h;
  final int s;
  final Pile.Head head;
  final RowSide side;
  final int stones;
  final int copies;

  /** How many stones are there already. */
  final int there;

  /** The greatest and the least that a stone is along its blank, whatever its place. */
  final long widest;

  final long narrowest;

  /** By how much two neighbours may differ along their blanks. */
  final long jump;

  /** The widest stone must be at least so long, or none can be the last. */
  final long last;

  /** The shortest stone may be no longer than this, or none can be the last. */
  final long first;

  private final long[] extra;
  private final List<Long> ends = new ArrayList<>();
  private final List<Long> lasts = new ArrayList<>();
  private final List<Long> shorts = new ArrayList<>();
  private final Map<Long, Boolean> joints = new HashMap<>();
  private final long extras;

  /**
   * @param shortfall no joint and no end may be wanting more spare, pm
   */
  SweepSide(Pile.Head head, int h, int s, Pile.Row row, int stones, long shortfall) {
    this.head = head;
    this.h = h;
    this.s = s;
    this.side = row.side();
    this.there = row.there().size();
    this.stones = stones;
    this.copies = head.copies();
    extra = new long[stones + 1];
    long sum = 0;
    long high = 0;
    long low = Long.MAX_VALUE;
    long step = side.joint() + head.min();
    for (int i = 1; i <= stones; i++) {
      boolean end = i == stones;
      extra[i] = side.extent(i, side.start(), side.start() + step, end) - head.min();
      sum += extra[i];
      high = Math.max(high, extra[i]);
      low = Math.min(low, extra[i]);
    }
    extras = sum;
    widest = head.max() + high;
    narrowest = head.min() + low;
    jump = head.jump() > head.max() ? Store.NEVER : head.jump() + high - low;
    long near = side.start() + stones * step;
    long far = side.start() + stones * (side.joint() + head.max());
    long lastLeast = Store.NEVER;
    for (long e = Math.max(near, 0); e <= Math.min(far, side.lastEnd()); e++) {
      if (side.bearingOff(e) >= 0 && side.shortfall(stones, e, true) <= shortfall) {
        long w = end(e, shortfall);
        lastLeast = Math.min(lastLeast, w);
      }
    }
    last = lastLeast;
    boolean past = lasts.stream().allMatch(w -> w == Store.NEVER);
    first = past ? shorts.stream().mapToLong(w -> w).max().orElse(-1) : Store.NEVER;
  }

  /** Takes note of an end, and gives the least length that the longest stone must have for it. */
  private long end(long e, long shortfall) {
    long from = next(e, head.min(), true, shortfall);
    long to = next(e, from, false, shortfall);
    long beyond = to > head.max() ? from : next(e, to, true, shortfall);
    // Others fall from a long last stone, or rise from a short one past the jamb, by steps at most.
    long longest = beyond > head.max() ? Store.NEVER : beyond + extra[stones];
    long shortest = to > head.max() ? -1 : to - 1 + extra[stones];
    longest = longest < Store.NEVER && stair(longest, false) > need(e) ? Store.NEVER : longest;
    shortest = shortest >= 0 && stair(shortest, true) < need(e) ? -1 : shortest;
    if (longest == Store.NEVER && shortest < 0) {
      return Store.NEVER;
    }
    ends.add(e);
    lasts.add(longest);
    shorts.add(shortest);
    return shortest < 0 ? longest : narrowest;
  }

  /** The next width from one on at which a last stone stands, or does not. */
  private long next(long e, long from, boolean stands, long shortfall) {
    long w = from;
    while (w <= head.max() && stands(e, w, shortfall) != stands) {
      w++;
    }
    return w;
  }

  /** What all come to if they rise or fall from the last by as much as neighbours may differ. */
  private long stair(long from, boolean up) {
    long sum = 0;
    for (long k = 0; k < stones; k++) {
      long by = jump >= Store.NEVER ? Store.NEVER / 64 : k * jump;
      sum += k == 0 ? from : up ? Math.min(widest, from + by) : Math.max(narrowest, from - by);
    }
    return sum;
  }

  private boolean stands(long e, long w, long shortfall) {
    long inner = e - side.joint() - w;
    return side.stands(stones, inner, e, true)
        && (stones == 1 ? inner == side.start() : joint(inner, shortfall));
  }

  /** Whether the joint before the last stone may stand at a foot. */
  private boolean joint(long foot, long shortfall) {
    if (side.shortfall(stones - 1, foot, false) > shortfall) {
      return false;
    }
    return joints.computeIfAbsent(foot, this::joint);
  }

  private boolean joint(long foot) {
    for (long w = head.min(); w <= head.max(); w++) {
      if (side.stands(stones - 1, foot - side.joint() - w, foot, false)) {
        return true;
      }
    }
    return false;
  }

  /**
   * How far the bearing is off at least, pm, all copies, where the stones come to so much at most,
   * the longest to so much, and no more than so much is sawn off them.
   */
  long bearing(long sum, long widest, long sawn) {
    long least = Store.NEVER;
    for (int i = ends.size() - 1; i >= 0 && sum - need(ends.get(i)) <= sawn; i--) {
      boolean stands = lasts.get(i) <= widest || shorts.get(i) >= 0;
      if (need(ends.get(i)) <= sum && stands) {
        least = Math.min(least, copies * side.bearingOff(ends.get(i)));
      }
    }
    return least;
  }

  boolean possible() {
    return !ends.isEmpty();
  }

  List<Long> ends() {
    return ends;
  }

  /** The least length of a last stone that covers the jamb, with the end of this number. */
  long last(int end) {
    return lasts.get(end);
  }

  /** The greatest length of a last stone past the jamb with the end of this number, or −1. */
  long shortLast(int end) {
    return shorts.get(end);
  }

  /**
   * The most that stones may come to in all which come to so much at most, the last of them to so
   * much; −1 where they reach no end.
   */
  long reached(long sum, long widest) {
    for (int i = ends.size() - 1; i >= 0; i--) {
      long need = need(ends.get(i));
      if (need <= sum && (lasts.get(i) <= widest || shorts.get(i) >= 0)) {
        return need;
      }
    }
    return -1;
  }

  /** What the place of a stone, from 1, adds to its width along the blank. */
  long extra(int place) {
    return extra[place];
  }

  /** What all stones come to along their blanks with this end. */
  long need(long end) {
    return end - side.start() - stones * side.joint() + extras;
  }

  /**
   * What all stones come to along their blanks with the nearest or the farthest of the ends whose
   * bearings are off by less than so much, all copies.
   */
  long need(long off, boolean nearest) {
    for (int i = 0; i < ends.size(); i++) {
      long e = ends.get(nearest ? i : ends.size() - 1 - i);
      if (copies * side.bearingOff(e) < off) {
        return need(e);
      }
    }
    return nearest ? Store.NEVER : -1;
  }

  /** Whether its stones and those of the other side are set against each other, from the first. */
  boolean pairs(SweepSide o) {
    for (int i = 1; i <= Math.min(stones, o.stones); i++) {
      if (extra[i] != o.extra[i]) {
        return false;
      }
    }
    return head.mirror() && there == o.there;
  }
}
