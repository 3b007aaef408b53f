package headcourse.choose;

import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.job.Opening;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds out what a letter means that stands in a job without its settings. */
public final class Letters {
  private Letters() {}

  /**
   * The job with the settings of every letter laid over its head, and a note for each on what to
   * write beside it; or what letters there are.
   *
   * @param job a job that was read from a file
   */
  public static Outcome<Job> settled(Job job) {
    List<Change> changes = new ArrayList<>();
    List<Diagnostic> said = new ArrayList<>();
    boolean failed = false;
    for (int i = 0; i < job.openings().size(); i++) {
      Opening o = job.openings().get(i);
      if (!o.choosing().chosen() || o.choosing().settings()) {
        continue;
      }
      Outcome<Choices> choices = Choices.checked(job, i);
      said.addAll(choices.diagnostics());
      Optional<Choice> choice = choices.value().flatMap(c -> c.lettered(o.choosing().letter()));
      failed |= choice.isEmpty();
      choices.value().filter(c -> choice.isEmpty()).ifPresent(c -> said.add(unknown(job, o, c)));
      choice.ifPresent(
          c -> {
            changes.add(
                new Change(o.path() + ".chosen", c.settings().text(), "what the letter means"));
            said.add(
                Diagnostic.note(
                    job.spans().of(o.path() + ".choose"),
                    o.mark()
                        + ": choose: "
                        + c.letter()
                        + " says by its letter alone which head is meant",
                    "so that a later version draws the same, write beside it chosen: "
                        + c.settings().text()));
          });
    }
    if (failed) {
      return Outcome.failed(said);
    }
    if (changes.isEmpty()) {
      return Outcome.of(job, List.of());
    }
    Outcome<Job> read = job.spans().rewriting().with(changes);
    said.addAll(read.diagnostics());
    return new Outcome<>(read.value(), said);
  }

  private static Diagnostic unknown(Job job, Opening o, Choices c) {
    int last = c.pictured().size() + c.rest().size() - 1;
    return Diagnostic.error(
        job.spans().of(o.path() + ".choose"),
        o.mark()
            + ": there is no choice "
            + o.choosing().letter()
            + "; expected "
            + (last == 0 ? "A" : "a letter from A to " + Choices.letter(last)),
        "headcourse choose shows them");
  }
}
