package headcourse.stock;

import headcourse.stock.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the most valuable ways to fill one blank, where each part has a value and each rule adds or
 * takes its own.
 *
 * <p>Where the least and the greatest lean on a blank are known, their difference is spent, and of
 * each part only its inner width (see {@link LeanBound#inner}) still counts: a knapsack, for each
 * such pair of leans, the most promising first. What fits is asked of the {@link Sequencer}.
 */
final class Pricer {
  private static final int STEPS = 300_000;
  private static final int HASTY = 20_000;
  private static final int EARLY = 1_500;
  private static final int KEPT = 6;

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final Widths widths;
  private final List<Rule> rules;
  private final List<int[]> found = new ArrayList<>();
  private Bin bin;
  private Ruling ruling;
  private long[] values;
  private int[] counts;
  private int[] place;
  private int[] order;
  private Completion completion;
  private long best;
  private long unsure;
  private long enough;
  private boolean early;
  private long steps;
  private long stepsHere;

  Pricer(CuttingProblem problem, Sequencer sequencer, List<Rule> rules) {
    this.problem = problem;
    this.sequencer = sequencer;
    this.widths = new Widths(problem.nesting());
    this.rules = rules;
  }

  /**
   * Filled blanks.
   *
   * @param found those worth more than enough, the best last
   * @param bound no filling is worth more
   * @param whole whether the search was not ended early because enough was found
   */
  record Priced(List<int[]> found, long bound, boolean whole) {}

  /** Leans from the least to the greatest, and what may at most be won with them. */
  private record Window(long low, long room, int[] order, long most) {}

  /** Steps of all searches. */
  long steps() {
    return steps;
  }

  /**
   * The best fillings of a kind of blank.
   *
   * @param b the kind
   * @param worth by type, not negative
   * @param duals by rule, not negative where it asks for so many at least, else not positive
   * @param threshold what is worth no more is of no interest
   * @param hasty whether some good ones are enough
   */
  Priced price(int b, long[] worth, long[] duals, long threshold, boolean hasty) {
    bin = problem.bins().get(b);
    values = worth;
    counts = new int[worth.length];
    found.clear();
    ruling = new Ruling(b, rules, duals);
    enough = Math.max(0, threshold - ruling.always());
    best = enough;
    unsure = 0;
    early = hasty;
    stepsHere = 0;
    if (bin.single()) {
      singles();
    } else {
      fillings();
    }
    steps += stepsHere;
    boolean whole = !stopped();
    List<int[]> last = found.subList(Math.max(0, found.size() - KEPT), found.size());
    return new Priced(List.copyOf(last), Math.max(best, unsure) + ruling.always(), whole);
  }

  private void singles() {
    for (int t = 0; t < counts.length; t++) {
      if (problem.demand()[t] > 0) {
        counts[t] = 1;
        stepsHere++;
        look(values[t] + ruling.of(counts));
        counts[t] = 0;
      }
    }
  }

  private void fillings() {
    long[] shared = new long[values.length];
    Arrays.setAll(shared, t -> values[t] + ruling.share(t));
    int[] all =
        IntStream.range(0, values.length)
            .filter(
                t ->
                    problem.demand()[t] > 0
                        && (values[t] > 0 || ruling.helps(t))
                        && problem.holds(bin, t))
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer t) -> -(double) shared[t] / widths.inner(t))
                    .thenComparing(t -> t))
            .mapToInt(t -> t)
            .toArray();
    long[] width = new long[values.length];
    for (int t : all) {
      width[t] = widths.inner(t);
    }
    long room = widths.room(bin);
    Completion whole = new Completion(all, width, shared, problem.demand(), room);
    stepsHere += whole.work();
    List<Window> windows = windows(all, width, shared, room);
    steps += windows.size() / 4;
    for (Window w : windows) {
      if (w.most <= Math.max(best, unsure) || stopped()) {
        break;
      }
      if (whole.of(0, w.room) <= Math.max(best, unsure)) {
        continue;
      }
      order = w.order;
      completion = new Completion(order, width, shared, problem.demand(), w.room);
      stepsHere += completion.work();
      place = new int[values.length];
      Arrays.fill(place, -1);
      for (int i = 0; i < order.length; i++) {
        place[order[i]] = i;
      }
      search(0, 0, w.room, false);
    }
  }

  private List<Window> windows(int[] all, long[] width, long[] worth, long room) {
    long[] lows = Arrays.stream(all).mapToLong(widths::low).distinct().sorted().toArray();
    long[] highs = Arrays.stream(all).mapToLong(widths::high).distinct().sorted().toArray();
    List<Window> out = new ArrayList<>();
    for (long low : lows) {
      for (long high : highs) {
        if (high - low < room) {
          int[] in =
              Arrays.stream(all)
                  .filter(t -> widths.low(t) >= low && widths.high(t) <= high)
                  .toArray();
          long left = room - (high - low);
          out.add(new Window(low, left, in, fraction(in, width, worth, left)));
        }
      }
    }
    out.sort(Comparator.comparingLong((Window w) -> -w.most).thenComparingLong(Window::low));
    return out;
  }

  /** The knapsack where parts may be split. */
  private long fraction(int[] of, long[] width, long[] worth, long room) {
    double sum = 0;
    long left = room;
    for (int t : of) {
      int n = problem.demand()[t];
      if (n * width[t] > left) {
        return (long) Math.ceil(sum + (double) worth[t] * left / width[t]) + 1;
      }
      sum += n * (double) worth[t];
      left -= n * width[t];
    }
    return (long) Math.ceil(sum) + 1;
  }

  private boolean stopped() {
    return early && stepsHere > EARLY && !found.isEmpty();
  }

  private void look(long value) {
    if (value <= best || ruling.splits(counts) || ruling.forbids(counts)) {
      return;
    }
    if (bin.single() || sequencer.fits(counts, bin.usable())) {
      best = value;
      found.add(counts.clone());
    } else {
      unsure = Math.max(unsure, value);
    }
  }

  private void search(int i, long value, long before, boolean changed) {
    stepsHere++;
    if (changed) {
      look(value + ruling.of(counts));
    }
    if (i == order.length || stopped() || ruling.splits(counts, place, i)) {
      return;
    }
    long room = changed ? widths.room(bin, counts, before) : before;
    long most = value + ruling.hope(counts, place, i) + completion.of(i, room);
    if (most <= Math.max(best, unsure)) {
      return;
    }
    if (stepsHere > (early ? HASTY : STEPS)) {
      unsure = most;
      return;
    }
    int t = order[i];
    long w = widths.inner(t);
    int n = 0;
    while (n < problem.demand()[t] && (n + 1) * w <= room) {
      counts[t]++;
      if (ruling.forbids(counts) || !sequencer.mayFit(counts, bin.usable())) {
        counts[t]--;
        break;
      }
      n++;
    }
    for (; n >= 0; n--) {
      search(i + 1, value + n * values[t], room - n * w, n > 0);
      if (n > 0) {
        counts[t]--;
      }
    }
  }
}
