package headcourse.stock.cutting;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Branch and bound over the patterns of one blank: parts are added in a fixed order, from those
 * that still go beside what lies there, as long as a knapsack of their inner widths promises more
 * than the best. What fits is asked of the {@link Sequencer}.
 */
final class PatternSearch {
  /** A longer search for a sequence counts for nodes here, or one pattern could take all. */
  private static final int LONG_SEQUENCE = 2_000;

  /** Operations at a node. */
  private static final int NODE = 25;

  /** Operations for each type in a measure of what is left of the room. */
  private static final int WIDTH = 10;

  /** So many good ones are enough of a hasty search; more of a large problem. */
  private static final int[] SOME = {8, 24};

  /** So many are told, and no more of them with the same type, so that columns differ. */
  private static final int[] KEPT = {40, 100};

  private static final int[] ALIKE = {4, 10};

  private final CuttingProblem problem;
  private final Sequencer sequencer;
  private final InnerWidths widths;
  private final Bin bin;
  private final RowDuals rows;
  private final long[] values;
  private final long enough;
  private final long early;
  private final long limit;
  private final int large;
  private final int[] counts;
  private final List<Found> found = new ArrayList<>();
  private final List<int[]> lists = new ArrayList<>();
  private final List<long[]> rooms = new ArrayList<>();
  private final List<KnapsackBound> knapsacks = new ArrayList<>();
  private KnapsackBound knapsack;
  private long best;
  private long unsure;
  private long nodes;
  private final StepBudget budget;

  /**
   * @param budget where it is out, it only bounds what is left
   * @param values by type
   * @param enough what is worth no more is of no interest
   * @param early after so many nodes it ends once something is found
   * @param limit after so many nodes it only bounds what is left
   */
  PatternSearch(
      CuttingProblem problem,
      Sequencer sequencer,
      StepBudget budget,
      InnerWidths widths,
      Bin bin,
      RowDuals rows,
      long[] values,
      long enough,
      long early,
      long limit) {
    this.problem = problem;
    this.budget = budget;
    this.sequencer = sequencer;
    this.widths = widths;
    this.bin = bin;
    this.rows = rows;
    this.values = values;
    this.early = early;
    this.limit = limit;
    this.enough = enough;
    best = enough;
    large = problem.large() ? 1 : 0;
    counts = new int[values.length];
    if (!bin.single()) {
      measure();
    }
  }

  private void measure() {
    int[] demand = problem.demand();
    long[] shared = new long[values.length];
    Arrays.setAll(shared, t -> values[t] + rows.share(t));
    int[] types =
        IntStream.range(0, values.length)
            .filter(t -> demand[t] > 0 && shared[t] > 0 && problem.holds(bin, t))
            .toArray();
    for (int k = 0; k < widths.measures(); k++) {
      knapsacks.add(new KnapsackBound(widths, k, types, shared, demand));
    }
    knapsack = knapsacks.get(0);
  }

  /** Types that are of use, the densest first. */
  int[] order() {
    return knapsacks.get(0).order();
  }

  private record Found(long value, int[] counts) {}

  /** Patterns worth more than enough, those worth most first, no type on too many of them. */
  List<int[]> found() {
    found.sort(
        Comparator.comparingLong((Found f) -> 0 - f.value)
            .thenComparing(Found::counts, Arrays::compare));
    List<int[]> out = new ArrayList<>();
    int[] used = new int[counts.length];
    for (Found f : found) {
      int[] present = Nesting.present(f.counts);
      if (out.size() < KEPT[large]
          && Arrays.stream(present).allMatch(t -> used[t] < ALIKE[large])) {
        out.add(f.counts);
        Arrays.stream(present).forEach(t -> used[t]++);
      }
    }
    return out;
  }

  /** No pattern looked at so far is worth more, nor any that was left out. */
  long most() {
    return Math.max(best, unsure);
  }

  boolean stopped() {
    return nodes > early && found.size() >= SOME[large];
  }

  /** Whether the search must end; what was not looked at may be worth so much. */
  boolean tired(long rest) {
    if (spent()) {
      unsure = Math.max(unsure, rest);
    }
    return spent();
  }

  private boolean spent() {
    return nodes > limit || budget.out();
  }

  /** One part alone. */
  void singles() {
    for (int t = 0; t < counts.length; t++) {
      if (problem.demand()[t] > 0) {
        counts[t] = 1;
        nodes++;
        look(values[t] + rows.of(counts));
        counts[t] = 0;
      }
    }
  }

  /** All patterns. */
  void all() {
    knapsack = knapsacks.get(0);
    long[] room = rooms(0, Nesting.present(counts));
    budget.spend(knapsack.refine(room));
    int[] order = knapsack.order();
    search(order, order.length, 0, new int[0], 0);
  }

  /** No pattern with these types is worth more, and any others beside. */
  long hope(int left, int right) {
    long value = lay(left, right, 1) + rows.hope(counts);
    long[] room = rooms(0, Nesting.present(counts));
    budget.spend((long) knapsacks.size() * (10 + counts.length / 4));
    long rest = Long.MAX_VALUE;
    for (KnapsackBound s : knapsacks) {
      rest = Math.min(rest, s.most(s.order(), 0, s.order().length, counts, room));
    }
    lay(left, right, -1);
    return value + rest;
  }

  /** Patterns with a type or two, and others beside; in the measure that promises least. */
  void from(int left, int right, boolean[] others) {
    long value = lay(left, right, 1);
    if (!rows.forbids(counts) && sequencer.mayFit(counts, bin.usable())) {
      look(value + rows.of(counts));
      long[] room = rooms(0, Nesting.present(counts));
      int[] list = {};
      long least = Long.MAX_VALUE;
      for (KnapsackBound s : knapsacks) {
        int[] some = Arrays.stream(s.order()).filter(t -> others[t] && goes(t, room)).toArray();
        long most = s.most(some, 0, some.length, counts, room);
        if (most < least) {
          least = most;
          knapsack = s;
          list = some;
        }
      }
      budget.spend((long) knapsacks.size() * counts.length * (room.length + 4));
      search(list, list.length, 0, Nesting.present(counts), value);
    }
    lay(left, right, -1);
  }

  private long lay(int left, int right, int n) {
    counts[left] += n;
    if (left == right) {
      return values[left];
    }
    counts[right] += n;
    return values[left] + values[right];
  }

  private int[] list(int depth) {
    while (lists.size() <= depth) {
      lists.add(new int[counts.length]);
    }
    return lists.get(depth);
  }

  private long[] rooms(int depth, int[] present) {
    while (rooms.size() <= depth) {
      rooms.add(new long[widths.measures()]);
    }
    long[] here = rooms.get(depth);
    budget.spend((long) here.length * (present.length + 1) * WIDTH);
    widths.rooms(bin, present, counts, here);
    return here;
  }

  /** Whether one more of a type goes there, as far as is seen at once. */
  private boolean goes(int type, long[] room) {
    if (counts[type] == problem.demand()[type]) {
      return false;
    }
    for (int k = 0; k < room.length; k++) {
      if (widths.inner(k, type) > room[k]) {
        return false;
      }
    }
    return true;
  }

  private void search(int[] types, int n, int depth, int[] present, long value) {
    long[] room = rooms.get(depth);
    for (int i = 0; i < n; i++) {
      int t = types[i];
      nodes++;
      budget.spend(NODE + (n - i) / 2);
      long most = value + rows.hope(counts) + knapsack.most(types, i, n, counts, room);
      if (stopped() || most <= most()) {
        return;
      }
      if (spent()) {
        unsure = most;
        return;
      }
      counts[t]++;
      int[] with = counts[t] > 1 ? present : with(present, t);
      if (!rows.forbids(counts) && isShort(rooms(depth + 1, with)) && mayFit(with)) {
        add(types, n, i, depth + 1, with, value + values[t]);
      }
      counts[t]--;
    }
  }

  private boolean mayFit(int[] with) {
    long before = sequencer.searched();
    boolean may = sequencer.mayFitByOrder(with, counts, bin.usable());
    long searched = sequencer.searched() - before;
    nodes += searched > LONG_SEQUENCE ? searched : 0;
    return may;
  }

  private static int[] with(int[] present, int type) {
    int[] more = Arrays.copyOf(present, present.length + 1);
    more[present.length] = type;
    Arrays.sort(more);
    return more;
  }

  private static boolean isShort(long[] rooms) {
    for (long room : rooms) {
      if (room < Nesting.SLACK / 2) {
        return false;
      }
    }
    return true;
  }

  /** With one more of the type at a place. */
  private void add(int[] types, int n, int i, int depth, int[] present, long value) {
    look(value + rows.of(counts));
    long[] room = rooms.get(depth);
    int[] list = list(depth);
    int m = 0;
    for (int k = i; k < n; k++) {
      if (goes(types[k], room)) {
        list[m++] = types[k];
      }
    }
    budget.spend((long) (n - i) * (room.length + 4));
    search(list, m, depth, present, value);
  }

  private void look(long value) {
    if (value <= enough || rows.forbids(counts)) {
      return;
    }
    if (bin.single() || sequencer.fits(counts, bin.usable())) {
      best = Math.max(best, value);
      found.add(new Found(value, counts.clone()));
    } else {
      unsure = Math.max(unsure, value);
    }
  }
}
