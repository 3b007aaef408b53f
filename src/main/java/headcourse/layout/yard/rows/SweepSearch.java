package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** Sets upright heads by sweeps over the pieces, for one choice of numbers after the other. */
final class SweepSearch {
  /** How many states of a layer are kept, the first time and later. */
  private static final int[] WIDTHS = {40, 400, 4_000, 40_000};

  /** How many states are kept in all, at a piece. */
  private static final int STATES = 2_000;

  private static final long NONE = Store.NEVER;

  /** What is wanting of spare at most, pm. */
  final long shortfall;

  /** Whether the last look for sides more alike left nothing out. */
  boolean proved;

  private final Pile pile;
  private final Store store;
  private final Moves moves;
  private final Numbers numbers;
  private final long[] floor;
  private final long[] near;
  private int from = -1;
  private Node best;
  private PairBound bound;
  private long cap;
  private final Steps steps;

  /**
   * @param shortfall no joint and no end may be wanting more spare, pm
   * @param until with how many steps in all no more numbers are collected
   */
  SweepSearch(Store store, Moves moves, long shortfall, long until) {
    pile = store.pile;
    steps = store.steps;
    this.store = store;
    this.moves = moves;
    this.shortfall = shortfall;
    numbers = new Numbers(store, shortfall, until);
    floor = numbers.all.stream().mapToLong(Numbers.Choice::root).toArray();
    near = floor.clone();
  }

  /** No choice with so little wanting of spare saws off less, unless it is the one known. */
  long floor() {
    return numbers.whole ? LongStream.of(floor).min().orElse(Store.NEVER) : 0;
  }

  /**
   * Looks for a choice that saws off less.
   *
   * @param known the best known, or null
   * @param until how many steps it may take in all
   */
  Node less(Node known, long until) {
    best = known;
    cap = 0;
    bound(best == null ? Store.NEVER : best.sawn + pile.give(), until);
    for (int i = 0; i < floor.length && steps.taken() < until; i++) {
      floor[i] = Math.max(floor[i], bound.sawn(numbers.all.get(i)));
    }
    for (int width : WIDTHS) {
      for (int i : order(STATES / width)) {
        long sawn = best == null ? Store.NEVER : best.sawn;
        if (steps.taken() < until && floor[i] < sawn) {
          Numbers.Choice c = numbers.all.get(i);
          Sweep.Bar bar = new Sweep.Bar(sawn == NONE ? NONE : sawn - c.sawn(), NONE, NONE);
          long least = sweep(i, width, bar, until, 0);
          floor[i] = Math.max(floor[i], Math.min(least, best == null ? Store.NEVER : best.sawn));
        }
      }
    }
    return best;
  }

  /**
   * Looks for a choice whose sides differ less, then for one with as little that saws off less, or
   * whose bearings are nearer their targets.
   *
   * @param known the best known
   * @param cap how much may be sawn off
   * @param until how many steps it may take in all
   */
  Node alike(Node known, long cap, long until) {
    best = known;
    this.cap = cap;
    bound(cap, until);
    proved = best.imbalance == 0 || all(() -> new Sweep.Bar(cap, best.imbalance, NONE), until);
    proved &= all(() -> new Sweep.Bar(best.sawn - 1, best.imbalance + 1, NONE), until);
    proved &= numbers.whole;
    proved &= all(() -> new Sweep.Bar(best.sawn, best.imbalance + 1, best.bearing), until);
    return best;
  }

  private void bound(long sawn, long until) {
    if (bound == null) {
      long limit = (until - steps.taken()) / 2;
      bound = new PairBound(store, numbers.all, moves.least()[2], sawn, limit);
    }
  }

  /** Sweeps for one aim after the other, each set by the best so far; whether nothing is left. */
  private boolean all(Supplier<Sweep.Bar> aim, long until) {
    boolean all = true;
    boolean[] done = new boolean[floor.length];
    for (int width : WIDTHS) {
      all = true;
      for (int i = 0; i < floor.length; i++) {
        Numbers.Choice c = numbers.all.get(i);
        done[i] |= steps.taken() < until && bound.beats(best.cost(), c, cap);
        Node before = null;
        while (!done[i] && before != best && steps.taken() < until) {
          Sweep.Bar bar = aim.get();
          before = best;
          Sweep.Bar own = new Sweep.Bar(bar.sawn() - c.sawn(), bar.imbalance(), bar.bearing());
          done[i] = c.root() > bar.sawn() || sweep(i, width, own, until, bar.sawn()) == Store.NEVER;
        }
        all &= done[i];
      }
    }
    return all;
  }

  /**
   * One sweep, and rows of what it finds.
   *
   * @param give how much may be sawn off in all for sides that differ less, or 0
   * @return what is sawn off at least by what was not looked at, or found no rows
   */
  private long sweep(int i, int width, Sweep.Bar bar, long until, long give) {
    Numbers.Choice c = numbers.all.get(i);
    Sweep sweep = c.sweep();
    long share = Math.min(until - steps.taken(), Math.max(20_000, (until - steps.taken()) / 3));
    List<SweepState> found = sweep.run(width, bar, steps.taken() + share);
    near[i] = found.isEmpty() ? Store.NEVER : found.get(0).low + c.sawn();
    long least = sweep.floor == Store.NEVER ? Store.NEVER : sweep.floor + c.sawn();
    for (SweepState s : found) {
      long low = s.low + c.sawn();
      if (steps.taken() >= until || !bar.alike() && best != null && low >= best.sawn) {
        return Math.min(least, low);
      }
      Node n = rows(c, s, Math.max(0, give - low));
      boolean better = n != null && (best == null || n.cost().compare(best.cost(), cap) < 0);
      if (bar.alike() ? !better : n == null || n.sawn > low) {
        least = Math.min(least, low);
      }
      if (better) {
        best = n;
        from = i;
      }
    }
    return least;
  }

  /** The choices that promise most, that of the best known first. */
  private List<Integer> order(int most) {
    return IntStream.range(0, floor.length)
        .boxed()
        .sorted(Comparator.comparingLong(i -> i == from ? -1 : near[i]))
        .limit(Math.max(2, most))
        .toList();
  }

  /** The state in which all stand, or null. */
  private Node rows(Numbers.Choice c, SweepState s, long give) {
    SweepSide[] sides = c.sides().toArray(SweepSide[]::new);
    Node n = new Node(new BitSet());
    for (int h = 0; h < pile.heads().size() && n != null; h++) {
      SweepRows of = new SweepRows(s, sides, h, shortfall, steps);
      List<List<SweepRows.Set>> rows = of.find(give / Math.max(1, pile.heads().get(h).copies()));
      n = rows == null ? null : start(n, c, h);
      while (n != null && !n.whole) {
        List<SweepRows.Set> row = rows.get(n.turn);
        int i = n.set[n.turn];
        n = moves.put(n, row.get(i).width(), i + 1 == row.size(), row.get(i).pieces());
      }
    }
    return n;
  }

  private Node start(Node n, Numbers.Choice c, int h) {
    List<Node> next = new ArrayList<>();
    moves.start(n, c.ways().get(h), next);
    return next.stream()
        .filter(x -> java.util.Arrays.equals(x.pieces, c.keys().get(h)))
        .findFirst()
        .orElse(null);
  }
}
