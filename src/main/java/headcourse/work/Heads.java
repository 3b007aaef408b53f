package headcourse.work;

import headcourse.cure.SettingOut;
import headcourse.diag.Diagnostic;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.layout.yard.FromStock;
import headcourse.layout.yard.PileChooser;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * The heads of a job, set out.
 *
 * @param solutions one for each opening
 * @param chosen what was taken from the pile
 */
record Heads(List<Solution> solutions, FromStock chosen) {
  /** What a trial with the pile may take. */
  private static final long SOON = 10_000;

  /** What it counts for, so that few are made. */
  private static final long PILE = 12_000;

  /** What it counts for where a jack arch is among them, whose stones take long to choose. */
  private static final long FAN = 36_000;

  /** Sets out all of a job. */
  static Heads of(Job job) {
    return of(job, step -> {});
  }

  /** The same, saying on the way which one it is at. */
  static Heads of(Job job, Consumer<String> steps) {
    int all = job.openings().size();
    if (job.openings().stream().anyMatch(Heads::fromStock)) {
      steps.accept("choosing stones from the yard");
    }
    // Openings whose stones come from the pile share it, so they are set out together.
    FromStock chosen = PileChooser.setOut(job, Shapes::named);
    List<Solution> solutions = new ArrayList<>();
    for (int i = 0; i < job.openings().size(); i++) {
      steps.accept("setting out " + job.openings().get(i).mark() + ", " + (i + 1) + " of " + all);
      Solution picked = chosen.solutions().isEmpty() ? null : chosen.solutions().get(i);
      solutions.add(picked == null ? shaped(job, i) : picked);
    }
    return new Heads(solutions, chosen);
  }

  /** The heads, where all came out. */
  List<HeadLayout> layouts() {
    List<HeadLayout> all = new ArrayList<>();
    solutions.forEach(s -> all.add(s instanceof Solution.Solved ok ? ok.head() : null));
    return all;
  }

  /**
   * Sets out an opening of the job with other values in it, beside the others as they are.
   *
   * @param more openings that are set out with it, because something is changed in them too
   */
  SettingOut trying(int... more) {
    return (job, opening) -> {
      List<Diagnostic> wrong = Contradictions.in(job);
      if (!wrong.isEmpty()) {
        return new Solution.Refused(wrong, List.of());
      }
      Solution own = one(job, opening);
      List<HeadLayout> heads = layouts();
      long effort = own.effort();
      for (int other : more) {
        Solution s = own instanceof Solution.Refused ? own : one(job, other);
        effort += s.effort();
        if (s instanceof Solution.Refused no) {
          return new Solution.Refused(no.problems(), no.proposals(), effort);
        }
        heads.set(other, ((Solution.Solved) s).head());
      }
      if (!(own instanceof Solution.Solved solved)) {
        return own;
      }
      heads.set(opening, solved.head());
      for (Piers.Clash clash : new Piers(job).clashes(heads)) {
        if (List.of(clash.one(), clash.other()).contains(opening)) {
          return clash.refused();
        }
      }
      return new Solution.Solved(solved.head(), effort);
    };
  }

  private static Solution one(Job job, int opening) {
    return fromStock(job.openings().get(opening)) ? picked(job, opening) : shaped(job, opening);
  }

  /**
   * What is soon found in the pile is found in any case, but for what befell the stones after they
   * were ticketed.
   */
  private static Solution picked(Job job, int opening) {
    boolean fresh = job.report().spoiled().isEmpty() && job.report().fitted().isEmpty();
    Solution soon = chosen(job.withSteps(Math.min(SOON, job.steps())), opening);
    return fresh || soon instanceof Solution.Refused ? soon : chosen(job, opening);
  }

  private static Solution chosen(Job job, int opening) {
    Solution solution = PileChooser.setOut(job, Shapes::named).solutions().get(opening);
    boolean fans =
        job.openings().stream().anyMatch(o -> fromStock(o) && o.head().shape().equals("jack"));
    long effort = fans ? FAN : PILE;
    return solution instanceof Solution.Refused no
        ? new Solution.Refused(no.problems(), no.proposals(), effort)
        : new Solution.Solved(((Solution.Solved) solution).head(), effort);
  }

  private static boolean fromStock(Opening o) {
    return o.head().stones().rhythm() == Rhythm.FROM_STOCK;
  }

  private static Solution shaped(Job job, int opening) {
    Opening o = job.openings().get(opening);
    return Shapes.named(o.head().shape()).orElseThrow().setOut(job, o);
  }
}
