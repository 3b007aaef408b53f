package headcourse.layout.side;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every foot that mixed widths can reach, by number of stones and last width: a bit a tick, so that
 * a whole level is a few shifts and ors. Exact; what it says can be reached it can also trace back,
 * stone by stone, without a wrong turn.
 */
final class SumTable {
  /**
   * Feet reached after a number of stones, by last width less the least.
   *
   * @param from the word that its rows begin with: no stones so narrow end before it
   * @param once where the last width stands for the first time running
   * @param twice where it stands for the second; null where neighbours always differ
   */
  private record Rows(int from, long[][] once, long[][] twice) {
    /** Whether a row has the bit of a foot. */
    boolean has(long[][] rows, int w, long at) {
      int k = (int) (at >> 6) - from;
      return at >= 0 && k >= 0 && k < rows[w].length && (rows[w][k] >>> (at & 63) & 1) != 0;
    }
  }

  /**
   * The same by how many of the stones may be too long for every blank, from none up.
   *
   * @param layers one for each number
   */
  private record Level(Rows[] layers) {}

  private final FlatTerms terms;
  private final Asked asked;
  private final SideCheck check;
  private final Lines lines;
  private final Neighbours rule;
  private final long start;
  private final int widths;
  private final int words;
  private final long joint;
  private final int layers;
  private final List<Level> levels = new ArrayList<>();
  private StoneMasks masks;
  private boolean full;
  private long effort;

  /** By number of stones and by layer, the feet where a last stone may begin. */
  private final Map<Integer, long[][][]> before = new HashMap<>();

  SumTable(FlatTerms terms, SideCase sides, Asked asked) {
    this.terms = terms;
    this.asked = asked;
    this.check = asked.check();
    this.layers = asked.counts() ? asked.tooLong() + 1 : 1;
    this.lines = sides.lines();
    this.rule = Neighbours.of(terms);
    this.start = sides.lines().start();
    this.widths = (int) (terms.widths().max() - terms.widths().min() + 1);
    this.joint = terms.joint();
    long span = sides.ends().get(sides.ends().size() - 1).foot() - start;
    this.words = (int) (span / 64 + 1);
  }

  /** Adds levels until there are so many, or until nothing can be reached any more. */
  private void fill(int most) {
    while (levels.size() < most && !full) {
      int index = levels.size() + 1;
      boolean own = index <= lines.regularFrom() + 1;
      if (own || !check.alike()) {
        masks = new StoneMasks(terms, asked, start, words, index, own ? null : masks);
      }
      Level next = index == 1 ? after(origin(), 1) : after(levels.get(index - 2), index);
      if (next == null) {
        full = true;
      } else {
        levels.add(next);
      }
    }
  }

  /** Words looked at so far. */
  long effort() {
    return effort;
  }

  /** Where the first stone begins, whatever its width. */
  private Level origin() {
    long[][] rows = new long[widths][];
    Arrays.fill(rows, new long[] {1});
    Rows[] all = new Rows[layers];
    Arrays.fill(all, new Rows(0, rows, null));
    return new Level(all);
  }

  private Level after(Level last, int index) {
    int from = (int) (index * (joint + terms.widths().min()) >> 6);
    int to = (int) Math.min(words - 1, index * (joint + terms.widths().max()) >> 6);
    if (from > to) {
      return null;
    }
    Rows[] next = new Rows[layers];
    boolean any = false;
    for (int k = 0; k < layers; k++) {
      effort += (long) widths * (to - from + 1);
      boolean twin = rule.step() <= 0;
      next[k] =
          new Rows(
              from, new long[widths][to - from + 1], twin ? new long[widths][to - from + 1] : null);
      any |= add(last.layers[k], index, false, next[k]);
      if (k > 0) {
        any |= add(last.layers[k - 1], index, true, next[k]);
      }
    }
    return any ? new Level(next) : null;
  }

  /** Adds a stone to what was reached, too long for its blanks or not. */
  private boolean add(Rows last, int index, boolean tooLong, Rows to) {
    long[][] leads = index == 1 ? last.once : leads(last);
    boolean any = false;
    for (int w = 0; w < widths; w++) {
      any |= masks.place(leads[w], last.from, w, tooLong, to.once[w], to.from);
      if (to.twice != null && index > 1) {
        any |= masks.place(last.once[w], last.from, w, tooLong, to.twice[w], to.from);
      }
    }
    return any;
  }

  /** By width, the feet where a stone of another width may begin after a level. */
  private long[][] leads(Rows level) {
    long[][] all = level.twice == null ? level.once : union(level.once, level.twice);
    return SlidingUnion.around(all, Math.max(1, rule.step()), rule.jump());
  }

  private long[][] union(long[][] a, long[][] b) {
    long[][] sum = new long[widths][a[0].length];
    for (int w = 0; w < widths; w++) {
      for (int k = 0; k < sum[w].length; k++) {
        sum[w][k] = a[w][k] | b[w][k];
      }
    }
    return sum;
  }

  /** Widths that lead to an end with so many stones, the seed deciding which; or null. */
  Choice trace(int count, End end, long seed) {
    if (count == 1) {
      boolean fits = check.endFits(1, start, end) && !(layers == 1 && tooLong(1, start, end));
      return fits ? new Choice(lines, end, new long[0]) : null;
    }
    fill(count - 1);
    if (count - 1 > levels.size()) {
      return null;
    }
    SplitMix random = new SplitMix(seed);
    long mean = (end.foot() - start) / count - joint;
    long[] feet = new long[count - 1];
    long outer = end.foot();
    long after = -1;
    int runAfter = 0;
    int layer = layers - 1;
    for (int i = count; i >= 1; i--) {
      Step step = step(i, count, end, outer, after, runAfter, layer, mean, random);
      if (step == null) {
        return null;
      }
      long inner = outer - joint - step.width;
      layer -= (i == count ? tooLong(i, inner, end) : tooLong(i, inner, outer)) ? 1 : 0;
      outer = inner;
      if (i > 1) {
        feet[i - 2] = outer;
      }
      after = step.width;
      runAfter = step.run;
    }
    return new Choice(lines, end, feet);
  }

  private boolean tooLong(int index, long inner, End end) {
    return asked.counts() && asked.blanks().tooLong(index, inner, end);
  }

  private boolean tooLong(int index, long inner, long outer) {
    return asked.counts() && asked.blanks().tooLong(index, inner, outer);
  }

  private record Step(long width, int run) {}

  /**
   * The width of stone {@code i} that ends at {@code outer}, when the next is {@code after} wide
   * and has to stand for the {@code runAfter}-th time running.
   *
   * @param layer how many stones up to it may be too long for every blank
   */
  private Step step(
      int i,
      int count,
      End end,
      long outer,
      long after,
      int runAfter,
      int layer,
      long mean,
      SplitMix random) {
    Step found = null;
    long best = 0;
    long[][][] leads = i == count ? before.computeIfAbsent(count, c -> new long[layers][][]) : null;
    for (int w = 0; w < widths; w++) {
      long width = terms.widths().min() + w;
      for (int run = 1; run <= 2; run++) {
        if (i == count
            ? !last(count, end, width, run, layer, leads)
            : !reached(i, outer, w, run, layer)) {
          continue;
        }
        boolean same = width == after;
        if (i < count && !(same ? runAfter == 2 && run == 1 : fits(width, after, runAfter))) {
          continue;
        }
        // Near the mean first, but by no rule that the eye could find.
        long rank = Math.abs(width - mean) / 2 + random.below(widths);
        if (found == null || rank < best) {
          found = new Step(width, run);
          best = rank;
        }
      }
    }
    return found;
  }

  private boolean fits(long width, long after, int runAfter) {
    return runAfter == 1 && rule.follow(width, 1, after);
  }

  private boolean reached(int count, long foot, int w, int run, int layer) {
    long at = foot - start;
    Rows level = levels.get(count - 1).layers[layer];
    long[][] rows = run == 1 ? level.once : level.twice;
    return rows != null && level.has(rows, w, at);
  }

  /** Whether the last stone may be so wide, for the first or second time running. */
  private boolean last(int count, End end, long width, int run, int most, long[][][] leads) {
    long inner = end.foot() - joint - width;
    if (run == 2 && rule.step() > 0 || inner < start || !check.endFits(count, inner, end)) {
      return false;
    }
    int layer = most - (tooLong(count, inner, end) ? 1 : 0);
    if (layer < 0) {
      return false;
    }
    int w = (int) (width - terms.widths().min());
    if (run == 2) {
      return reached(count - 1, inner, w, 1, layer);
    }
    Rows rows = levels.get(count - 2).layers[layer];
    if (leads[layer] == null) {
      leads[layer] = leads(rows);
    }
    return rows.has(leads[layer], w, inner - start);
  }
}
