package headcourse.bench;

import headcourse.bench.Lands.Mover;
import headcourse.bench.builds.BuildPlan;
import headcourse.bench.builds.BuildSide;
import headcourse.bench.builds.Errors;
import headcourse.bench.builds.Tally;
import headcourse.units.Length;
import java.util.List;

/**
 * What each error by itself spreads the end of a side, built without checks. Independent errors add
 * as {@code σ√n}; one that is the same for n stones as {@code n·σ}; half the key's counts.
 */
final class Movers {
  private Movers() {}

  /** What the builds of a plan come to. */
  static Lands of(Tally tally, BuildPlan plan, String care, boolean dry) {
    Lands worst = null;
    for (BuildSide side : List.of(plan.first(), plan.second())) {
      for (Mover mover : Mover.values()) {
        Length by = Length.mm(spread(plan, side, mover));
        if (worst == null || by.compareTo(worst.spread()) > 0) {
          double out = dry ? joints(plan, side) * plan.errors().joint() : 0;
          boolean closes = plan.first().closes() && plan.second().closes();
          worst = new Lands(tally, closes, care, mover, by, alike(plan, side), Length.mm(out));
        }
      }
    }
    return worst;
  }

  /** Standard deviation that an error alone gives the end, mm. */
  static double spread(BuildPlan plan, BuildSide side, Mover mover) {
    Errors e = plan.errors();
    double[] at = counts(plan, side);
    return switch (mover) {
      case FENCE -> {
        double sum = 0;
        for (double n : at) {
          sum += n * n;
        }
        yield e.fence() * Math.sqrt(sum);
      }
      case CUT -> {
        double n = plan.keyed() && plan.keySetting() >= 0 ? 0.25 : 0;
        for (BuildSide.Stone s : side.stones()) {
          n += s.setting() >= 0 ? 1 : 0;
        }
        yield e.cut() * Math.sqrt(n);
      }
      case JOINT -> {
        // The middle joint of a head without a key is shared by both sides.
        double n = plan.keyed() ? side.stones().size() : side.stones().size() - 0.75;
        yield e.joint() * Math.sqrt(Math.max(0, n));
      }
      case KEY -> e.key();
      case SITE -> e.site() / 2;
    };
  }

  private static double joints(BuildPlan plan, BuildSide side) {
    return side.stones().size() - (plan.keyed() ? 0 : 0.5);
  }

  /** How many stones of a side are cut at each setting, the key's half as a half. */
  private static double[] counts(BuildPlan plan, BuildSide side) {
    double[] at = new double[plan.settings()];
    for (BuildSide.Stone s : side.stones()) {
      if (s.setting() >= 0) {
        at[s.setting()]++;
      }
    }
    if (plan.keyed() && plan.keySetting() >= 0) {
      at[plan.keySetting()] += 0.5;
    }
    return at;
  }

  private static int alike(BuildPlan plan, BuildSide side) {
    double most = 0;
    for (double n : counts(plan, side)) {
      most = Math.max(most, n);
    }
    return (int) most;
  }
}
