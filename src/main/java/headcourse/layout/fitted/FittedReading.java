package headcourse.layout.fitted;

import headcourse.diag.Diagnostic;
import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import java.util.ArrayList;
import java.util.List;

/** The stones of one opening that the job says are cut. */
public final class FittedReading {
  private final Job job;
  private final Opening opening;

  /** Reads those of one opening. */
  public FittedReading(Job job, Opening opening) {
    this.job = job;
    this.opening = opening;
  }

  /** The stones of an opening that are cut. */
  public static List<Fitted> of(Job job, Opening opening) {
    return job.report().fitted().stream().filter(f -> f.opening().equals(opening.mark())).toList();
  }

  /** What can't be solved around whatever the rest is. */
  public List<Diagnostic> problems() {
    List<Diagnostic> all = new ArrayList<>();
    for (Fitted f : of(job, opening)) {
      boolean key = f.stone().equals("K");
      if (key && f.top() != null && f.top().compareTo(f.bottom()) < 0) {
        all.add(
            Diagnostic.error(
                job.spans().of(f.path()),
                opening.mark()
                    + ": the key as it was cut is narrower at the top than at the foot; it would"
                    + " slide down between its neighbours",
                "cut another, or correct bottom: and top:"));
      }
      if (key && opening.head().key() == null) {
        all.add(
            Diagnostic.error(
                job.spans().of(f.path()),
                opening.mark() + ": a key is fitted, but this head has none",
                "leave K out, or give the head a key:"));
      }
    }
    return all;
  }

  /**
   * Stones passed over that the drawing has not either, so that nobody knows where what lies beyond
   * them stands.
   *
   * @param drawn the head without fitted stones, or null
   */
  public List<Diagnostic> gaps(HeadLayout drawn) {
    List<Diagnostic> all = new ArrayList<>();
    List<Fitted> fitted = of(job, opening);
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      String letter = side == Side.LEFT ? "L" : "R";
      int there = 0;
      while (known(letter + (there + 1), fitted, drawn)) {
        there++;
      }
      String missing = letter + (there + 1);
      for (Fitted f : fitted) {
        boolean beyond = f.stone().startsWith(letter);
        if (beyond && Integer.parseInt(f.stone().substring(1)) > there) {
          all.add(
              Diagnostic.error(
                  job.spans().of(f.path()),
                  opening.mark()
                      + ": "
                      + f.stone()
                      + " is fitted, but "
                      + missing
                      + (drawn == null
                          ? " was not measured, and without fitted stones the head can't be drawn"
                          : " was not measured, and the drawing has no such stone"),
                  "write " + missing + ": with its width too, or correct the mark"));
          break;
        }
      }
    }
    return all;
  }

  private static boolean known(String mark, List<Fitted> fitted, HeadLayout drawn) {
    return fitted.stream().anyMatch(f -> f.stone().equals(mark))
        || drawn != null && drawn.stones().stream().anyMatch(s -> s.mark().equals(mark));
  }
}
