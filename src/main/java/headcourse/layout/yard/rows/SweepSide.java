package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.stream.LongStream;

/**
 * A side of an upright head that gets so many stones. How long a stone is along its blank is its
 * width and what its place adds, so that what a side takes in all depends on its end only.
 */
final class SweepSide {
  /** By how much neighbours may differ where they may by any length. */
  static final long FREE = Store.NEVER / 1024;

  final int h;
  final Pile.Head head;
  final RowSide side;
  final int stones;
  final int copies;

  /** The ends that stones may reach, the nearest first. */
  final List<End> ends = new ArrayList<>();

  /** The greatest and the least that a stone is along its blank, whatever its place. */
  final long widest;

  final long narrowest;

  /** By how much two neighbours may differ along their blanks. */
  final long jump;

  /** The widest stone must be at least so long, or none can be the last. */
  final long last;

  /** The shortest stone may be no longer than this, or none can be the last. */
  final long first;

  /** What the place of a stone, from 1, adds to its width along the blank. */
  final long[] extra;

  private final int there;
  private final long shortfall;
  private final long extras;
  private final Map<Long, Boolean> joints = new HashMap<>();

  /**
   * An end.
   *
   * @param foot where it is
   * @param need what all stones come to along their blanks
   * @param off how far the bearing is off, pm, all copies
   * @param longest the least length of a last stone that covers the jamb
   * @param shortest the greatest length of a last stone past the jamb, or −1
   */
  record End(long foot, long need, long off, long longest, long shortest) {
    /** Whether stones may reach it that come to so much at most, the longest to so much. */
    boolean reached(long sum, long widest) {
      return need <= sum && (longest <= widest || shortest >= 0);
    }
  }

  /**
   * @param shortfall no joint and no end may be wanting more spare, pm
   */
  SweepSide(Pile.Head head, int h, Pile.Row row, int stones, long shortfall) {
    this.head = head;
    this.h = h;
    this.side = row.side();
    this.there = row.there().size();
    this.stones = stones;
    this.copies = head.copies();
    this.shortfall = shortfall;
    extra = new long[stones + 1];
    long step = side.joint() + head.min();
    for (int i = 1; i <= stones; i++) {
      extra[i] = side.extent(i, side.start(), side.start() + step, i == stones) - head.min();
    }
    LongSummaryStatistics of = LongStream.of(extra).skip(1).summaryStatistics();
    extras = of.getSum();
    widest = head.max() + of.getMax();
    narrowest = head.min() + of.getMin();
    jump = head.jump() > head.max() ? FREE : head.jump() + of.getMax() - of.getMin();
    long far = side.start() + stones * (side.joint() + head.max());
    far = Math.min(far, side.lastEnd());
    for (long e = Math.max(side.start() + stones * step, 0); e <= far; e++) {
      if (side.bearingOff(e) >= 0 && side.shortfall(stones, e, true) <= shortfall) {
        end(e, e - side.start() - stones * side.joint() + extras);
      }
    }
    last =
        ends.stream()
            .mapToLong(e -> e.shortest() < 0 ? e.longest() : narrowest)
            .min()
            .orElse(Store.NEVER);
    boolean past = ends.stream().allMatch(e -> e.longest() == Store.NEVER);
    first = past ? ends.stream().mapToLong(End::shortest).max().orElse(-1) : FREE;
  }

  /** Takes note of an end if a last stone may reach it. */
  private void end(long e, long need) {
    long from = next(e, head.min(), true);
    long to = next(e, from, false);
    long beyond = to > head.max() ? from : next(e, to, true);
    // Others fall from a long last stone, or rise from a short one past the jamb, by steps at most.
    long longest = beyond > head.max() ? Store.NEVER : beyond + extra[stones];
    long shortest = to > head.max() ? -1 : to - 1 + extra[stones];
    longest = longest < Store.NEVER && stair(longest, false) > need ? Store.NEVER : longest;
    shortest = shortest >= 0 && stair(shortest, true) < need ? -1 : shortest;
    if (longest < Store.NEVER || shortest >= 0) {
      ends.add(new End(e, need, copies * side.bearingOff(e), longest, shortest));
    }
  }

  /** The next width from one on at which a last stone stands, or does not. */
  private long next(long e, long from, boolean stands) {
    long w = from;
    while (w <= head.max() && stands(e, w) != stands) {
      w++;
    }
    return w;
  }

  /** What all come to if they rise or fall from the last by as much as neighbours may differ. */
  private long stair(long from, boolean up) {
    long sum = 0;
    for (long k = 0; k < stones; k++) {
      sum += up ? Math.min(widest, from + k * jump) : Math.max(narrowest, from - k * jump);
    }
    return sum;
  }

  private boolean stands(long e, long w) {
    long inner = e - side.joint() - w;
    return side.stands(stones, inner, e, true)
        && (stones == 1 ? inner == side.start() : joints.computeIfAbsent(inner, this::joint));
  }

  /** Whether the joint before the last stone may stand at a foot. */
  private boolean joint(long foot) {
    return side.shortfall(stones - 1, foot, false) <= shortfall
        && LongStream.rangeClosed(head.min(), head.max())
            .anyMatch(w -> side.stands(stones - 1, foot - side.joint() - w, foot, false));
  }

  /**
   * How far the bearing is off at least, pm, all copies, where the stones come to so much at most,
   * the longest to so much, and no more than so much is sawn off them.
   */
  long bearing(long sum, long widest, long sawn) {
    return ends.stream()
        .filter(e -> e.reached(sum, widest) && sum - e.need() <= sawn)
        .mapToLong(End::off)
        .min()
        .orElse(Store.NEVER);
  }

  /**
   * The most that stones may come to in all which come to so much at most, the last of them to so
   * much; −1 where they reach no end.
   */
  long reached(long sum, long widest) {
    for (int i = ends.size() - 1; i >= 0; i--) {
      if (ends.get(i).reached(sum, widest)) {
        return ends.get(i).need();
      }
    }
    return -1;
  }

  /**
   * What all stones come to along their blanks with the nearest or the farthest of the ends whose
   * bearings are off by less than so much, all copies.
   */
  long need(long off, boolean nearest) {
    LongStream needs = ends.stream().filter(e -> e.off() < off).mapToLong(End::need);
    return nearest ? needs.min().orElse(Store.NEVER) : needs.max().orElse(-1);
  }

  /** Whether its stones and those of the other side are set against each other, from the first. */
  boolean pairs(SweepSide o) {
    int to = 1 + Math.min(stones, o.stones);
    return head.mirror() && there == o.there && Arrays.equals(extra, 1, to, o.extra, 1, to);
  }
}
