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
   * What makes a head stand, the smallest change first, and where one value alone does, that one
   * with others that let it be less; none for a job without a file.
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
    List<Dial> dials = Dials.steadying(job, opening, flat);
    List<Dial.Turned> alone = new ArrayList<>();
    for (Dial dial : dials) {
      Dial.Turned turned = dial.turned(trials, List.of());
      if (turned != null) {
        alone.add(turned);
      }
    }
    alone.sort(Comparator.comparingDouble(Dial.Turned::size));
    List<List<Change>> all = new ArrayList<>(alone.stream().map(Dial.Turned::changes).toList());
    if (all.size() == 1) {
      all.addAll(together(trials, dials, alone.get(0)));
    }
    return all.stream().limit(OFFERED).toList();
  }

  /** The one value that does it by itself turned less, with some other turned too. */
  private static List<List<Change>> together(Trials trials, List<Dial> dials, Dial.Turned alone) {
    List<Dial.Turned> found = new ArrayList<>();
    for (Dial other : dials) {
      if (other == alone.dial()) {
        continue;
      }
      Dial.Turned best = null;
      for (long value : other.some()) {
        List<Change> also = other.writes().apply(value);
        Dial.Turned turned = also == null ? null : alone.dial().turned(trials, also);
        best = turned != null && (best == null || turned.size() < best.size()) ? turned : best;
      }
      if (best != null && best.size() < alone.size()) {
        found.add(best);
      }
    }
    found.sort(Comparator.comparingDouble(Dial.Turned::size));
    return found.stream().map(Dial.Turned::changes).toList();
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
