package headcourse.choose;

import headcourse.bench.HeadBench;
import headcourse.bench.HeadWork;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.layout.Arrangement;
import headcourse.layout.HeadLayout;
import headcourse.stock.StockPlan;
import headcourse.stock.StockPlanner;
import headcourse.units.Length;
import java.util.List;

/**
 * How many blanks a head takes: those of the yard, and one for each stone that none is there for.
 */
final class BlankCount {
  /** More stones than this come out of no blank. */
  private static final int MOST = 12;

  private BlankCount() {}

  /** By the cutting plan for this head alone. */
  static int planned(Candidate c) {
    Job job = c.combination().job();
    HeadLayout layout = c.arrangement().head().get();
    HeadWork head = HeadBench.forBlanks(job, layout);
    return of(StockPlanner.plan(job, List.of(head)));
  }

  /** Those of a plan. */
  static int of(StockPlan plan) {
    int missing =
        plan.order().stream()
            .filter(l -> l.stock().isEmpty())
            .mapToInt(l -> l.count() - l.spares())
            .sum();
    return plan.blanks().size() + missing;
  }

  /**
   * No plan takes fewer. Along any level line the stones of one row lie side by side with a kerf
   * between them, and so they do in the mean over their height; no more than k of those longer than
   * a k+1st part of the longest blank, kerfs counted, come out of one; fewer out of one that gives
   * a key. Upright heads alone are looked at.
   */
  static int least(Candidate c) {
    Job job = c.combination().job();
    long clean = job.tools().saw().cleanCut().times(2).picometres();
    long longest =
        job.stock().items().stream()
            .map(Stock.Item::length)
            .mapToLong(l -> l.picometres() - clean)
            .max()
            .orElse(0);
    int times = c.combination().opening().count();
    if (job.stock().items().isEmpty()) {
      return times * (c.arrangement().stones() + (c.head().key() == null ? 0 : 1));
    }
    if (!c.head().shape().equals("soldier")) {
      return 0;
    }
    long kerf = job.tools().saw().kerf().picometres();
    long[] lengths = lengths(c);
    long key = lengths[lengths.length - 1];
    boolean alone = key > 0 && (times == 1 || 2 * key + kerf > longest);
    long least = 0;
    for (int k = 1; k <= MOST; k++) {
      long longer = 0;
      long shortest = Long.MAX_VALUE;
      for (int i = 0; i < lengths.length - 1; i++) {
        if ((lengths[i] + kerf) * (k + 1) > longest + kerf) {
          longer += times;
          shortest = Math.min(shortest, lengths[i]);
        }
      }
      least = Math.max(least, -Math.floorDiv(-longer, (long) k));
      if (alone && longer > 0) {
        long beside = times * Math.max(0, (longest - key) / (shortest + kerf));
        least = Math.max(least, times - Math.floorDiv(-Math.max(0, longer - beside), (long) k));
      }
    }
    return (int) least;
  }

  /**
   * What the stones of an upright head take along a row at least: along the arris of corners, from
   * which none is cut turned, and else in the mean over their height.
   */
  private static long[] lengths(Candidate c) {
    int ease = c.head().params().count("ease").orElse(1);
    Arrangement a = c.arrangement();
    boolean arris = c.head().soffit() == HeadSpec.Soffit.RETURNED;
    long lean = arris ? 0 : Math.abs(a.keyTop().minus(a.key()).picometres()) / 2;
    long[] lengths = new long[a.stones() + 1];
    int n = 0;
    for (List<Length> side : List.of(a.left(), a.right())) {
      for (int i = 0; i < side.size(); i++) {
        lengths[n++] = side.get(i).picometres() - (i < ease ? lean : 0);
      }
    }
    HeadSpec.Key key = c.head().key();
    lengths[n] = key == null ? 0 : a.key().min(a.keyTop()).min(key.bottom()).picometres();
    return lengths;
  }
}
