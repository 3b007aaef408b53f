package headcourse.layout.side;

import java.util.HashSet;
import java.util.Set;

/**
 * Looks for widths that lead from the key to one end with a given number of stones: depth first,
 * the seed deciding what is tried first, dead states remembered. Exhaustive unless it meets its
 * limit.
 */
final class SequenceSearch {
  private final SideCheck check;
  private final Blanks blanks;
  private final Lines lines;
  private final End end;
  private final int count;
  private final long joint;
  private final Neighbours rule;
  private final Reach reach;
  private final SplitMix random;
  private final long limit;
  private final long[] feet;
  private final Set<Long> dead = new HashSet<>();
  private long nodes;
  private long effort;

  SequenceSearch(
      FlatTerms terms, SideCase sides, End end, int count, Asked asked, long seed, long limit) {
    this.check = asked.check();
    this.blanks = asked.tooLong() == 0 ? asked.blanks() : null;
    this.lines = sides.lines();
    this.end = end;
    this.count = count;
    this.joint = terms.joint();
    this.rule = Neighbours.of(terms);
    this.reach = new Reach(terms, check, lines, end, count);
    this.random = new SplitMix(seed);
    this.limit = limit;
    this.feet = new long[count - 1];
  }

  /** The choice, or null. */
  Choice find() {
    return reach.may(count, lines.start()) && place(0, lines.start(), -1, 0)
        ? new Choice(lines, end, feet)
        : null;
  }

  /** How many stones were tried. */
  long nodes() {
    return nodes;
  }

  /** What it took: half a step for a width looked at, whether or not it could stand. */
  long effort() {
    return effort;
  }

  /** Whether it gave up, so that null means nothing. */
  boolean gaveUp() {
    return nodes > limit;
  }

  private boolean place(int placed, long foot, long previous, int run) {
    int left = count - placed;
    long rest = end.foot() - foot - left * joint;
    if (left == 1) {
      nodes++;
      return (placed == 0 || rule.follow(previous, run, rest))
          && check.endFits(count, foot, end)
          && (blanks == null || !blanks.tooLong(count, foot, end));
    }
    long low = Math.max(rule.min(), rest - rule.most(left - 1));
    long high = Math.min(rule.max(), rest - rule.least(left - 1));
    if (low > high) {
      return false;
    }
    effort += (high - low) / 2 + 1;
    long[] order = order(low, high, rest, left);
    for (long width : order) {
      if (placed > 0 && !rule.follow(previous, run, width)) {
        continue;
      }
      long next = foot + joint + width;
      int nextRun = width == previous ? run + 1 : 1;
      if (!reach.may(left - 1, next)) {
        continue;
      }
      if (!check.jointStands(placed + 1, next) || !check.stoneFits(placed + 1, foot, next)) {
        continue;
      }
      if (blanks != null && blanks.tooLong(placed + 1, foot, next)) {
        continue;
      }
      long state = (((next << 20) | width) << 11 | (placed + 1)) << 1 | (nextRun - 1);
      if (dead.contains(state)) {
        continue;
      }
      if (++nodes > limit) {
        return false;
      }
      feet[placed] = next;
      if (place(placed + 1, next, width, nextRun)) {
        return true;
      }
      dead.add(state);
    }
    return false;
  }

  /**
   * The widths in the order they are tried: shuffled, those first that lie evenly about the mean of
   * what is left, so that the last stones need not make up for the first.
   */
  private long[] order(long low, long high, long rest, int left) {
    int n = (int) (high - low + 1);
    long[] order = new long[n];
    for (int i = 0; i < n; i++) {
      int j = random.below(i + 1);
      order[i] = order[j];
      order[j] = low + i;
    }
    long spread = Math.min(rest - left * rule.min(), left * rule.max() - rest);
    long[] sorted = new long[n];
    int k = 0;
    for (int pass = 0; pass < 2; pass++) {
      for (long w : order) {
        if ((Math.abs(left * w - rest) <= spread) == (pass == 0)) {
          sorted[k++] = w;
        }
      }
    }
    return sorted;
  }
}
