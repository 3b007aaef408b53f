package headcourse.cure;

import headcourse.job.Change;
import headcourse.layout.HeadLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;

/**
 * A value of the job that may be turned until the head can be set out.
 *
 * @param path where it stands
 * @param base what it is, as a multiple of its unit (a tick, two ticks, one stone)
 * @param way the only way that makes things easier, −1 or +1; 0 where either may
 * @param limit how far it may be turned
 * @param whole what its base is measured against, to say how large a change is
 * @param writes what is written for another value; null where it can't be
 * @param tells how the head that then comes out falls short of what was asked; empty where there is
 *     nothing to say
 */
record Dial(
    String path,
    long base,
    int way,
    long limit,
    double whole,
    LongFunction<List<Change>> writes,
    Function<HeadLayout, String> tells) {

  private static final long FAR = 48;
  private static final long NEAR = 20;

  /**
   * A value that was found to help.
   *
   * @param changes what is written in all, what was written before included
   */
  record Turned(Dial dial, long value, List<Change> changes, HeadLayout head) {
    double size() {
      return Math.abs(value - dial.base) / dial.whole;
    }

    String tells() {
      return dial.tells.apply(head);
    }
  }

  /** Changes on top of others; of two at one place the later holds. */
  static List<Change> onTop(List<Change> before, List<Change> more) {
    List<Change> all = new ArrayList<>(before);
    all.removeIf(c -> more.stream().anyMatch(m -> m.path().equals(c.path())));
    all.addAll(more);
    return all;
  }

  /** Values that give way far, to find out whether another can help then. */
  long[] wide() {
    if (way != 0) {
      return limit < 1 ? new long[0] : new long[] {base + way * limit};
    }
    long some = Math.max(1, limit / 6);
    return new long[] {base - some, base + some, base - 3 * some, base + 3 * some};
  }

  /** The smallest turn that helps when other changes are written too, or null. */
  Turned turned(Trials trials, List<Change> also) {
    return limit < 1 ? null : way == 0 ? nearest(trials, also) : least(trials, also);
  }

  private Turned at(long value, Trials trials, List<Change> also) {
    List<Change> own = writes.apply(value);
    if (own == null || trials.tired()) {
      return null;
    }
    List<Change> all = onTop(also, own);
    HeadLayout head = trials.head(all);
    return head == null ? null : new Turned(this, value, all, head);
  }

  private Turned nearest(Trials trials, List<Change> also) {
    // What may go far is tried at every step near by only, farther out at every sixth part more.
    long near = limit > FAR ? NEAR : limit;
    for (long d = 1; d <= limit; d += 1 + Math.max(0, d - near) / 6) {
      for (long value : new long[] {base - d, base + d}) {
        Turned turned = at(value, trials, also);
        if (turned != null) {
          return turned;
        }
      }
    }
    return null;
  }

  /** What is easier stays so farther on, so if the farthest helps, halving finds the least. */
  private Turned least(Trials trials, List<Change> also) {
    Turned best = at(base + way * limit, trials, also);
    if (best == null) {
      return null;
    }
    long bad = 0;
    long good = limit;
    // The least is more often near than far.
    for (long probe = 1; probe < good; probe *= 2) {
      Turned turned = at(base + way * probe, trials, also);
      if (turned != null) {
        best = turned;
        good = probe;
        break;
      }
      bad = probe;
    }
    while (good - bad > 1) {
      long mid = (good + bad) >>> 1;
      Turned turned = at(base + way * mid, trials, also);
      if (turned == null) {
        bad = mid;
      } else {
        good = mid;
        best = turned;
      }
    }
    return best;
  }

  /**
   * The smallest turn that helps by itself, or null. What helps need not do so farther on, so it is
   * looked for from near by, each time twice as far off.
   */
  Turned smallest(Trials trials) {
    Turned best = null;
    for (int sign : way == 0 ? new int[] {-1, 1} : new int[] {way}) {
      long bad = 0;
      for (long probe = 1; bad < limit; probe = Math.min(limit, 2 * probe)) {
        Turned turned = at(base + sign * probe, trials, List.of());
        if (turned != null) {
          Turned least = between(sign, bad, turned, trials, List.of());
          best = best == null || least.size() < best.size() ? least : best;
          break;
        }
        bad = probe;
      }
    }
    return best;
  }

  /** The smallest turn up to a given one that helps when other changes are written too, or null. */
  Turned upTo(long most, Trials trials, List<Change> also) {
    Turned best = null;
    for (int sign : way == 0 ? new int[] {-1, 1} : new int[] {way}) {
      Turned turned = most < 1 ? null : at(base + sign * Math.min(most, limit), trials, also);
      if (turned != null) {
        Turned least = between(sign, 0, turned, trials, also);
        best = best == null || least.size() < best.size() ? least : best;
      }
    }
    return best;
  }

  /** The least turn that helps, of those between one that does not and one that does. */
  private Turned between(int sign, long bad, Turned good, Trials trials, List<Change> also) {
    long from = bad;
    Turned best = good;
    for (long to = Math.abs(good.value - base); to - from > 1; ) {
      long mid = (from + to) >>> 1;
      Turned turned = at(base + sign * mid, trials, also);
      if (turned == null) {
        from = mid;
      } else {
        to = mid;
        best = turned;
      }
    }
    return best;
  }

  /** Values off by such parts of what it is measured against, the ways it may be turned. */
  long[] parts(double... parts) {
    return LongStream.concat(
            way > 0 ? LongStream.empty() : DoubleStream.of(parts).mapToLong(p -> base - step(p)),
            way < 0 ? LongStream.empty() : DoubleStream.of(parts).mapToLong(p -> base + step(p)))
        .filter(v -> Math.abs(v - base) <= limit)
        .distinct()
        .toArray();
  }

  private long step(double part) {
    return Math.max(1, Math.round(part * whole));
  }
}
