package headcourse.work;

import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.cure.Advice;
import headcourse.cure.Adviser;
import headcourse.cure.Cure;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.diag.Severity;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.layout.Solution;
import headcourse.testing.JobMaker;
import headcourse.testing.JobText;
import headcourse.testing.JobYaml;
import java.util.ArrayList;
import java.util.List;

/** Writes every cure that is offered into the job file, and counts what comes of it. */
public final class CureCheck {
  public int refused;
  public int helped;
  public int offered;
  public int together;
  public final List<String> failed = new ArrayList<>();
  public long mostEffort;

  /** What is said of the first opening of a job that can't be set out, or null where it can. */
  public static Advice advice(JobMaker maker) {
    return advice(JobYaml.job(JobYaml.of(maker)), 0);
  }

  /** What is said of an opening that can't be set out, or null where it can. */
  public static Advice advice(Job job, int opening) {
    Heads heads = Heads.of(job);
    return heads.solutions().get(opening) instanceof Solution.Refused no
        ? Adviser.on(job, opening, no, heads.trying())
        : null;
  }

  /** Counts a job, unless the reader refuses it. */
  public CureCheck of(JobMaker maker, String at) {
    String text = JobYaml.of(maker);
    of(text, at);
    return this;
  }

  /** Counts a job file, unless the reader refuses it. */
  public void of(String text, String at) {
    JobYaml.read(text).value().ifPresent(job -> of(text, job, at));
  }

  private void of(String text, Job job, String at) {
    Heads heads = Heads.of(job);
    List<Solution> solutions = heads.solutions();
    for (int k = 0; k < solutions.size(); k++) {
      if (!(solutions.get(k) instanceof Solution.Refused no)) {
        continue;
      }
      count(text, Adviser.on(job, k, no, heads.trying()), k, at);
    }
    if (solutions.stream().allMatch(s -> s instanceof Solution.Solved)) {
      for (Piers.Clash c : new Piers(job).clashes(heads.layouts())) {
        count(
            text,
            Adviser.between(job, c.one(), c.other(), c.refused(), heads.trying(c.other())),
            -1,
            at);
      }
    }
  }

  private void count(String text, Advice advice, int k, String at) {
    Diagnostic first = advice.problems().get(0);
    assertTrue(first.severity() == Severity.ERROR, at);
    assertTrue(advice.cures().size() <= 3, at);
    mostEffort = Math.max(mostEffort, advice.effort());
    refused++;
    helped += advice.cures().isEmpty() ? 0 : 1;
    for (Cure cure : advice.cures()) {
      offered++;
      together += cure.changes().size() > 1 ? 1 : 0;
      for (Change c : cure.changes()) {
        boolean hinted =
            first.hints().stream()
                .anyMatch(h -> h.contains(c.leavesOut() ? "without " : ": " + c.value()));
        assertTrue(hinted, at + " not said: " + c);
      }
      String wrong = wrong(text, cure, k);
      if (!wrong.isEmpty()) {
        failed.add(at + ": " + cure.changes() + ": " + wrong);
      }
    }
  }

  /** Why an opening can't be set out with a cure written into the file; empty where it can. */
  private static String wrong(String text, Cure cure, int opening) {
    Outcome<Job> read = JobYaml.read(JobText.with(text, cure.changes()));
    if (read.value().isEmpty()) {
      return read.diagnostics().get(0).message();
    }
    Job job = read.value().get();
    if (job.openings().size() == 1 || opening < 0) {
      Outcome<ShopWork> done = WorkUp.of(job);
      return done.value().isPresent() ? "" : done.diagnostics().get(0).message();
    }
    return Heads.of(job).solutions().get(opening) instanceof Solution.Refused no
        ? no.problems().get(0).message()
        : "";
  }

  @Override
  public String toString() {
    return refused
        + " refused, "
        + helped
        + " helped, "
        + offered
        + " cures offered ("
        + together
        + " of several changes), "
        + failed.size()
        + " failed, most effort "
        + mostEffort;
  }
}
