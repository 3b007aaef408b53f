package headcourse.stock.pile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Lets the pieces of a choice change places, for several numbers of stones in turn. */
final class SwapTrials {
  /** So many numbers of stones are tried. */
  private static final int TRIED = 16;

  /** So many of them once more, for longer. */
  private static final int AGAIN = 2;

  private final PileTypes types;
  private final SweepTables tables;
  private final Pile.Cost goal;
  private final long most;
  private PileDraft best;
  private long steps;

  /**
   * @param best the best known
   * @param goal no choice costs less
   * @param most how many steps it may take
   */
  SwapTrials(PileTypes types, SweepTables tables, PileDraft best, Pile.Cost goal, long most) {
    this.types = types;
    this.tables = tables;
    this.best = best;
    this.goal = goal;
    this.most = most;
  }

  /** The best choice come upon, or the one that was known. */
  PileDraft best() {
    return best;
  }

  long steps() {
    return steps;
  }

  /**
   * Tries numbers of stones, the likeliest first.
   *
   * @param seed of the changes that are tried
   */
  void run(List<SweepBounds> numbers, long seed) {
    PileDraft from = best;
    List<PileSwaps> all = new ArrayList<>();
    int n = Math.min(TRIED, numbers.size());
    for (SweepBounds of : numbers.subList(0, n)) {
      // Rows of its own, since those of the bounds are narrowed from time to time.
      List<RowPair> pairs = new ArrayList<>();
      for (RowPair p : of.pairs()) {
        pairs.add(new RowPair(p.head(), p.h(), new RowShape(p.left()), new RowShape(p.right())));
      }
      SweepBounds bounds = new SweepBounds(types, pairs, tables, 0);
      SwapRows rows = SwapRows.of(types, bounds, from);
      if (rows != null) {
        PileSwaps swaps = new PileSwaps(bounds, rows, seed + all.size());
        run(swaps, most / 2 / n);
        all.add(swaps);
      }
    }
    all.sort(Comparator.comparingDouble(PileSwaps::worth));
    for (PileSwaps swaps : all.subList(0, Math.min(AGAIN, all.size()))) {
      run(swaps, most / 2 / AGAIN);
    }
  }

  private void run(PileSwaps swaps, long limit) {
    long before = swaps.steps();
    best = swaps.run(best, goal, limit);
    steps += swaps.steps() - before;
  }
}
