package headcourse.layout.flat;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Change;
import headcourse.layout.HeadLayout;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;

/** Single values of an opening, each turned until the head comes out, whoever sets it out. */
public final class Turns {
  private static final int FEW = 4;

  private Turns() {}

  /** Sets out a job that may have no solution. */
  public interface Solver {
    /** The head of the opening, or null. */
    HeadLayout solve(Job job, Opening opening);
  }

  /**
   * Changes that help, the smallest first.
   *
   * @param terms the head as it is asked for
   * @param solver what soon sets it out, if it does
   * @param sure whether it comes out as the job asks for it
   * @param most how many changes are offered
   */
  public static List<Change> of(
      FlatTerms terms, Solver solver, BiPredicate<Job, Opening> sure, int most) {
    LengthFormat format = new LengthFormat(terms.job().units(), terms.job().grid());
    List<Knob.Turned> found = new ArrayList<>();
    List<Knob> knobs = Knobs.of(terms, format);
    // Another rhythm takes one trial, and helps most; mixed widths may take long where none come
    // out.
    String mixed = HeadSpec.Rhythm.MIXED.word();
    knobs.removeIf(k -> k.path().endsWith(".rhythm") && k.text().apply(1).equals(mixed));
    knobs.sort(Comparator.comparingInt(k -> k.path().endsWith(".rhythm") ? 0 : 1));
    for (Knob knob : knobs) {
      // What lies in the yard, and what is cut, is no matter of this one opening's values; and what
      // has no easier way would be tried too often.
      boolean own = knob.path().startsWith(terms.opening().path() + ".");
      own &= knob.way() != 0 || knob.limit() <= FEW;
      Knob.Turned turned = own ? knob.turned(a -> solver.solve(a.job(), a.opening())) : null;
      if (turned != null) {
        found.add(turned);
      }
    }
    found.sort(Comparator.comparingDouble(Knob.Turned::size));
    List<Change> out = new ArrayList<>();
    for (Knob.Turned t : found) {
      Knob.Asked asked = t.knob().with().apply(t.value());
      if (out.size() < most && sure.test(asked.job(), asked.opening())) {
        String text = t.knob().text().apply(t.value());
        out.add(new Change(t.knob().path(), text, t.knob().reason()));
      }
    }
    return out;
  }
}
