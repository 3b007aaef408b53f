package headcourse.cure;

import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.statics.StandingFinder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Looks for the smallest changes after which a head would stand if it were solid. Every change that
 * is offered was written into the job file, read again, set out, and its blocks found at rest.
 */
public final class Steadier {
  /** How many are offered. */
  private static final int OFFERED = 3;

  /** What looking for them may take, in steps. */
  private static final long PATIENCE = 200_000;

  private Steadier() {}

  /**
   * What each by itself makes a head stand, the smallest first; none for a job without a file.
   *
   * @param job the job
   * @param number of the opening whose head would not stand
   * @param setting sets out a job in which something was changed
   */
  public static List<List<Change>> cures(Job job, int number, SettingOut setting) {
    if (job.spans().rewriting() == null) {
      return List.of();
    }
    Opening opening = job.openings().get(number);
    Trials trials = new Trials(job, number, standing(setting), PATIENCE);
    boolean flat = Shapes.named(opening.head().shape()).orElseThrow().flat();
    List<Dial.Turned> found = new ArrayList<>();
    for (Dial dial : Dials.steadying(job, opening, flat)) {
      Dial.Turned turned = dial.turned(trials, List.of());
      if (turned != null) {
        found.add(turned);
      }
    }
    found.sort(Comparator.comparingDouble(Dial.Turned::size));
    return found.stream().limit(OFFERED).map(Dial.Turned::changes).toList();
  }

  /** A head that would not stand counts as refused. */
  private static SettingOut standing(SettingOut setting) {
    return (job, opening) -> {
      Solution solution = setting.of(job, opening);
      return solution instanceof Solution.Solved s && !StandingFinder.stands(job, s.head())
          ? new Solution.Refused(List.of(), List.of(), s.effort())
          : solution;
    };
  }
}
