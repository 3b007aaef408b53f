package headcourse.layout.flat;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import java.util.function.Function;
import java.util.function.LongFunction;

/**
 * A value of the job that may be turned until the head can be set out.
 *
 * @param path where it stands
 * @param base what it is, as a multiple of its unit (a tick, two ticks, one stone)
 * @param way the only way that makes things easier, −1 or +1; 0 where either may
 * @param limit how far it may be turned
 * @param whole what its base is measured against, to say how large a change is
 * @param with the job with another value
 * @param text another value as a job file has it
 * @param tells how the head that then comes out falls short of what was asked; empty where there is
 *     nothing to say
 * @param reason what the change does
 */
record Knob(
    String path,
    long base,
    int way,
    long limit,
    double whole,
    LongFunction<Asked> with,
    LongFunction<String> text,
    Function<HeadLayout, String> tells,
    String reason) {

  private static final long FAR = 48;
  private static final long NEAR = 20;

  /** A job and the opening of it that is asked about. */
  record Asked(Job job, Opening opening) {}

  /** A value that was found to help. */
  record Turned(Knob knob, long value, HeadLayout head) {
    double size() {
      return Math.abs(value - knob.base) / knob.whole;
    }
  }

  /** Solves a job that may have no solution: the head or null. */
  interface Trier {
    HeadLayout tried(Asked asked);
  }

  /** Values that give way far, to find out whether another can help then. */
  long[] wide() {
    if (way != 0) {
      return limit < 1 ? new long[0] : new long[] {base + way * limit};
    }
    long some = Math.max(1, limit / 6);
    return new long[] {base - some, base + some, base - 3 * some, base + 3 * some};
  }

  /** The smallest turn that helps, or null. */
  Turned turned(Trier trier) {
    return way == 0 ? nearest(trier) : least(trier);
  }

  private Turned nearest(Trier trier) {
    // What may go far is tried at every step near by only, farther out at every sixth part more.
    long near = limit > FAR ? NEAR : limit;
    for (long d = 1; d <= limit; d += 1 + Math.max(0, d - near) / 6) {
      for (long value : new long[] {base - d, base + d}) {
        Asked asked = with.apply(value);
        HeadLayout head = asked == null ? null : trier.tried(asked);
        if (head != null) {
          return new Turned(this, value, head);
        }
      }
    }
    return null;
  }

  /** What is easier stays so farther on, so doubling and halving finds the least. */
  private Turned least(Trier trier) {
    long bad = 0;
    long good = 1;
    if (limit < 1) {
      return null;
    }
    HeadLayout head = trier.tried(with.apply(base + way * good));
    while (head == null) {
      if (good == limit) {
        return null;
      }
      bad = good;
      good = Math.min(limit, 2 * good);
      head = trier.tried(with.apply(base + way * good));
    }
    while (good - bad > 1) {
      long mid = (good + bad) >>> 1;
      HeadLayout h = trier.tried(with.apply(base + way * mid));
      if (h == null) {
        bad = mid;
      } else {
        good = mid;
        head = h;
      }
    }
    return new Turned(this, base + way * good, head);
  }
}
