package headcourse.work;

import headcourse.bench.HeadBench;
import headcourse.bench.HeadWork;
import headcourse.cure.SettingOut;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.stock.StockPlan;
import headcourse.stock.StockPlan.Saving;
import headcourse.stock.StockPlanner;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Widths near the one that an opening's stones aim at, for which the job would take fewer blanks.
 * Tried are widths a step apart on either side, the nearest first, once for each number of stones.
 */
final class OtherWidths {
  /** Widths are tried so far off: 1/8 in or 3 mm apart, up to 1 in or 24 mm. */
  private static final int STEPS = 8;

  private static final double EIGHTH = 1 / 8.0;
  private static final double MILLIMETRES = 3;

  /** A plan of a trial takes no longer than this; what it saves may be less than could be. */
  private static final long SOON = 5_000;

  /** Of more blanks nobody waits for plans on trial. */
  private static final int MOST_BLANKS = 60;

  private final Job job;
  private final List<HeadWork> heads;
  private final StockPlan plan;
  private final SettingOut trying;

  OtherWidths(Job job, List<HeadWork> heads, StockPlan plan, SettingOut trying) {
    this.job = job;
    this.heads = heads;
    this.plan = plan;
    this.trying = trying;
  }

  /** For each opening the width that saves most, if any does. */
  List<Saving> savings() {
    List<Saving> out = new ArrayList<>();
    boolean begun =
        !job.report().fitted().isEmpty()
            || !job.report().cut().isEmpty()
            || !job.report().spoiled().isEmpty();
    if (begun || plan.blanks().isEmpty() || plan.blanks().size() > MOST_BLANKS) {
      return out;
    }
    for (int i = 0; i < job.openings().size(); i++) {
      HeadSpec.Stones stones = job.openings().get(i).head().stones();
      boolean free = stones.widths() == null && stones.eachSide() == null;
      if (free && stones.rhythm() != HeadSpec.Rhythm.FROM_STOCK && stones.target() != null) {
        best(i, out);
      }
    }
    return out;
  }

  private void best(int i, List<Saving> out) {
    Opening opening = job.openings().get(i);
    HeadSpec.Stones stones = opening.head().stones();
    Set<Integer> numbers = new TreeSet<>(List.of(heads.get(i).layout().stones().size()));
    int least = plan.blanks().size();
    Saving best = null;
    for (Length width : near(stones)) {
      Opening other = opening.with(opening.head().with(stones.withTarget(width)));
      Job trial = job.with(i, other).withSteps(Math.min(SOON, job.steps()));
      if (!(trying.of(trial, i) instanceof Solution.Solved solved)
          || !numbers.add(solved.head().stones().size())
          || landsWorse(solved.head(), heads.get(i).layout())) {
        continue;
      }
      List<HeadWork> with = new ArrayList<>(heads);
      with.set(i, HeadBench.workUp(trial, solved.head()));
      StockPlan then = StockPlanner.plan(trial, with);
      if (then.blanks().size() < least
          && then.unfit().size() <= plan.unfit().size()
          && then.price() <= plan.price()) {
        least = then.blanks().size();
        best = new Saving(opening.mark(), width, stones.target(), least);
      }
    }
    if (best != null) {
      out.add(best);
    }
  }

  private static boolean landsWorse(HeadLayout then, HeadLayout now) {
    Length is = now.proof().shortfall();
    Length would = then.proof().shortfall();
    // Some heads are not chosen by how they land.
    return is != null && would != null && would.compareTo(is) > 0;
  }

  private List<Length> near(HeadSpec.Stones stones) {
    boolean inches = job.units() == Units.INCH;
    List<Length> out = new ArrayList<>();
    for (int k = 1; k <= STEPS; k++) {
      Length off = inches ? Length.inches(k * EIGHTH) : Length.mm(k * MILLIMETRES);
      for (Length w : List.of(stones.target().minus(off), stones.target().plus(off))) {
        if (w.compareTo(stones.min()) >= 0 && w.compareTo(stones.max()) <= 0) {
          out.add(w);
        }
      }
    }
    return out;
  }
}
