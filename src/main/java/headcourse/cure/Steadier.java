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
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Looks for the smallest changes after which a head would stand if it were solid. Every change that
 * is offered was written into the job file, read again, set out, and its blocks found at rest.
 */
public final class Steadier {
  /** How many are offered. */
  private static final int OFFERED = 3;

  /** Parts of itself by which the second of two values is turned. */
  private static final double[] PARTS = {0.125, 0.25, 0.5};

  /**
   * Beside another, a value must be turned at most so much of what it is alone; more only where
   * that gives no choice.
   */
  private static final double[] LESS = {0.75, 0.92};

  /** With so many in hand no such pair is looked for. */
  private static final int[] ENOUGH = {OFFERED, 2};

  /** What looking for them may take, in steps. */
  private static final long PATIENCE = 200_000;

  private Steadier() {}

  /**
   * What makes a head stand: values that do it alone, the smallest change first; where they are
   * few, also two together, each turned less than it would have to be alone. None for a job without
   * a file.
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
    Comparator<Way> smallest = Comparator.comparingDouble(Way::size);
    List<Way> alone = new ArrayList<>();
    for (Dial dial : dials) {
      Dial.Turned turned = dial.smallest(trials);
      if (turned != null) {
        alone.add(new Way(turned, turned.size()));
      }
    }
    alone.sort(smallest);
    List<Way> all = new ArrayList<>(alone);
    for (int pass = 0; pass < LESS.length && all.size() < ENOUGH[pass]; pass++) {
      List<Way> two = new ArrayList<>();
      for (Dial dial : dials) {
        two.addAll(together(trials, dials, dial, LESS[pass], alone));
      }
      two.sort(smallest);
      addUnlike(all, two);
      all.sort(smallest);
    }
    return all.stream().limit(OFFERED).map(c -> c.turned.changes()).toList();
  }

  /**
   * A way to cure it.
   *
   * @param turned the value that was turned last, with all that is written
   * @param size of all its changes
   */
  private record Way(Dial.Turned turned, double size) {}

  /** Of two that turn the same values the smaller is enough. */
  private static void addUnlike(List<Way> all, List<Way> more) {
    for (Way c : more) {
      if (all.stream().noneMatch(a -> paths(a).equals(paths(c)))) {
        all.add(c);
      }
    }
  }

  private static Set<String> paths(Way c) {
    return c.turned.changes().stream()
        .map(Change::path)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** How far a value is turned where it does it alone, or how far it goes. */
  private static long farthest(List<Way> alone, Dial dial) {
    return alone.stream()
        .filter(c -> c.turned.dial() == dial)
        .mapToLong(c -> Math.abs(c.turned.value() - dial.base()))
        .findFirst()
        .orElse(dial.limit());
  }

  /** A value turned less than it must be alone, with some other turned a little too. */
  private static List<Way> together(
      Trials trials, List<Dial> dials, Dial dial, double less, List<Way> alone) {
    List<Way> found = new ArrayList<>();
    long most = Math.round(farthest(alone, dial) * less);
    for (Dial other : dials) {
      Way best = null;
      for (long value : other == dial ? new long[0] : other.parts(PARTS)) {
        boolean enough = Math.abs(value - other.base()) >= farthest(alone, other);
        List<Change> also = enough ? null : other.writes().apply(value);
        Dial.Turned turned = also == null ? null : dial.upTo(most, trials, also);
        if (turned == null) {
          continue;
        }
        double size = turned.size() + Math.abs(value - other.base()) / other.whole();
        best = best == null || size < best.size ? new Way(turned, size) : best;
      }
      if (best != null) {
        found.add(best);
      }
    }
    return found;
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
