package headcourse.layout.flat;

import java.util.IdentityHashMap;
import java.util.Map;

/**
 * Every foot that mixed widths can reach, by number of stones and last width: a bit a tick, so that
 * a whole level is a few shifts and ors. Exact.
 */
final class SumTable {
  private final FlatTerms terms;
  private final SideCase sides;
  private final SideCheck check;
  private final long start;
  private final int widths;
  private final int words;
  private final long joint;
  private final Map<End, boolean[]> reached = new IdentityHashMap<>();

  SumTable(FlatTerms terms, SideCase sides, boolean fan) {
    this.terms = terms;
    this.sides = sides;
    this.check = new SideCheck(terms, sides.lines(), fan);
    this.start = sides.lines().start();
    this.widths = (int) (terms.max() - terms.min() + 1);
    this.joint = terms.joint();
    long span = sides.ends().get(sides.ends().size() - 1).foot() - start;
    this.words = (int) (span / 64 + 1);
    int levels = (int) (span / (terms.min() + joint)) + 2;
    for (End e : sides.ends()) {
      boolean[] counts = new boolean[levels];
      counts[1] = check.endFits(1, start, e);
      reached.put(e, counts);
    }
    fill(levels);
  }

  /** Whether so many stones can end there. */
  boolean reaches(int count, End end) {
    return reached.get(end)[count];
  }

  private void fill(int levels) {
    Neighbours rule = Neighbours.of(terms);
    long apart = Math.max(1, rule.step());
    boolean twin = rule.step() <= 0;
    long[][] once = new long[widths][words];
    long[][] twice = new long[widths][words];
    long[] origin = new long[words];
    origin[0] = 1;
    Masks masks = new Masks(1);
    for (int w = 0; w < widths; w++) {
      masks.place(origin, w, once[w]);
    }
    for (int level = 1; level + 1 < levels; level++) {
      long[][] all = twin ? union(once, twice) : once;
      long[][] before = SlidingOr.around(all, apart, rule.jump());
      markEnds(level + 1, before);
      if (twin) {
        markEnds(level + 1, once);
      }
      masks = masks.at(level + 1);
      long[][] next = new long[widths][words];
      boolean any = false;
      for (int w = 0; w < widths; w++) {
        if (twin) {
          twice[w] = new long[words];
          any |= masks.place(once[w], w, twice[w]);
        }
        any |= masks.place(before[w], w, next[w]);
      }
      once = next;
      if (!any) {
        return;
      }
    }
  }

  private long[][] union(long[][] a, long[][] b) {
    long[][] sum = new long[widths][words];
    for (int w = 0; w < widths; w++) {
      for (int k = 0; k < words; k++) {
        sum[w][k] = a[w][k] | b[w][k];
      }
    }
    return sum;
  }

  private void markEnds(int count, long[][] before) {
    for (End e : sides.ends()) {
      for (int w = 0; w < widths && !reached.get(e)[count]; w++) {
        long at = e.foot() - start - joint - terms.min() - w;
        if (at >= 0
            && (before[w][(int) (at >> 6)] >>> (at & 63) & 1) != 0
            && check.endFits(count, start + at, e)) {
          reached.get(e)[count] = true;
        }
      }
    }
  }

  /** Where the joint after stone {@code index} may stand, and how far out each width fits. */
  private final class Masks {
    private final int index;
    private final long[] stands = new long[words];
    private final long[] reach = new long[widths];

    Masks(int index) {
      this.index = index;
      for (long at = 0; at < words * 64L; at++) {
        if (check.jointStands(index, start + at)) {
          stands[(int) (at >> 6)] |= 1L << (at & 63);
        }
      }
      for (int w = 0; w < widths; w++) {
        reach[w] = reach(joint + terms.min() + w);
      }
    }

    /** Fanned stones grow outwards, so what fits does so up to some foot; upright ones anywhere. */
    private long reach(long pitch) {
      if (index == 1) {
        return check.stoneFits(1, start, start + pitch) ? 0 : -1;
      }
      long good = -1;
      long bad = words * 64L;
      while (bad - good > 1) {
        long mid = (good + bad) >>> 1;
        if (check.stoneFits(index, start + mid, start + mid + pitch)) {
          good = mid;
        } else {
          bad = mid;
        }
      }
      return good;
    }

    Masks at(int next) {
      return next <= sides.lines().regularFrom() + 1 ? new Masks(next) : this;
    }

    /** Moves feet out by one stone; keeps what stands and fits. */
    boolean place(long[] from, int width, long[] to) {
      long pitch = joint + terms.min() + width;
      int word = (int) (pitch >> 6);
      int bit = (int) (pitch & 63);
      long last = reach[width] + pitch;
      long any = 0;
      for (int k = words - 1; k >= word && last >= 0; k--) {
        long moved = from[k - word] << bit;
        if (bit > 0 && k > word) {
          moved |= from[k - word - 1] >>> (64 - bit);
        }
        moved &= stands[k];
        if (last < k * 64L + 63) {
          moved &= last < k * 64L ? 0 : -1L >>> (63 - (last - k * 64L));
        }
        to[k] = moved;
        any |= moved;
      }
      return any != 0;
    }
  }
}
