package headcourse.choose;

import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Change;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What there is to choose from for one opening.
 *
 * @param job the job, as it is without a choice for the opening
 * @param opening the opening
 * @param pictured at most {@value #PICTURED}, worked out, in their order
 * @param rest the others that none outdoes, in the order of what is known of them
 * @param all how many heads keep what the job asks
 * @param faulty of those worked out, how many are left out because an error stands against them
 * @param faults the rules that stand against these
 * @param refused why some of what may vary comes to nothing
 */
public record Choices(
    Job job,
    Opening opening,
    List<Choice> pictured,
    List<Choice> rest,
    int all,
    int faulty,
    List<String> faults,
    List<String> refused) {
  /** How many are shown as pictures. */
  public static final int PICTURED = 12;

  /** How many of them are of another shape or rhythm than the first, where there are any. */
  public static final int UNLIKE = 2;

  /** Copies the lists. */
  public Choices {
    pictured = List.copyOf(pictured);
    rest = List.copyOf(rest);
    faults = List.copyOf(faults);
    refused = List.copyOf(refused);
  }

  /**
   * What there is to choose from.
   *
   * @param job a job that was read from a file
   * @param opening the opening's number in it
   */
  public static Choices of(Job job, int opening) {
    Job base = withoutChoice(job, opening);
    Enumeration found = Enumeration.of(base, opening);
    return new Ranking(base, opening, found).choices();
  }

  /**
   * The same, or why there is nothing to choose from.
   *
   * @param job a job that was read from a file
   * @param opening the opening's number in it
   */
  public static Outcome<Choices> checked(Job job, int opening) {
    Opening o = job.openings().get(opening);
    if (o.head().stones().rhythm() == HeadSpec.Rhythm.FROM_STOCK) {
      return Outcome.failed(
          List.of(
              Diagnostic.error(
                  job.spans().of(o.path() + ".head.stones.rhythm"),
                  o.mark() + ": stones from the yard are chosen for all openings together",
                  "write rhythm: even, graded or mixed to choose a head for " + o.mark())));
    }
    if (cut(job, o.mark())) {
      return Outcome.failed(
          List.of(
              Diagnostic.error(
                  job.spans().of(o.path()),
                  o.mark() + ": stones of it are cut already, so its head is chosen",
                  "a head is chosen before anything is ordered and cut")));
    }
    Choices found = of(job, opening);
    if (!found.pictured().isEmpty()) {
      return Outcome.of(found, List.of());
    }
    List<Diagnostic> why = new ArrayList<>();
    Job base = withoutChoice(job, opening).alone(opening);
    why.add(
        Diagnostic.error(
            job.spans().of(o.path() + ".head"),
            o.mark() + ": no head keeps what the job asks, with all that may vary",
            "headcourse check says what would help"));
    found.refused().forEach(r -> why.add(Diagnostic.note(job.spans().of(o.path() + ".vary"), r)));
    if (o.choosing().vary().dials().isEmpty()) {
      why.addAll(WorkUp.of(base).diagnostics());
    }
    return Outcome.failed(why);
  }

  private static boolean cut(Job job, String mark) {
    return job.report().fitted().stream().anyMatch(f -> f.opening().equals(mark))
        || job.report().cut().stream().anyMatch(c -> c.opening().equals(mark))
        || job.report().spoiled().stream().anyMatch(s -> s.startsWith(mark + "-"));
  }

  /** The job as it is without the choice made for an opening. */
  static Job withoutChoice(Job job, int opening) {
    Opening o = job.openings().get(opening);
    if (!o.choosing().chosen()) {
      return job;
    }
    Outcome<Job> read =
        job.spans()
            .rewriting()
            .with(
                List.of(
                    new Change(o.path() + ".choose", null, "as it was before the choice"),
                    new Change(o.path() + ".chosen", null, "as it was before the choice")));
    return read.value().orElse(job);
  }

  /** How many are left out because others outdo them. */
  public int outdone() {
    return all - pictured.size() - rest.size() - faulty;
  }

  /** The choice of a letter. */
  public Optional<Choice> lettered(String letter) {
    return every().filter(c -> c.letter().equals(letter)).findFirst();
  }

  /** The choice that a head is. */
  public Optional<Choice> drawn(HeadLayout head) {
    return every().filter(c -> SameHead.are(c.head(), head)).findFirst();
  }

  private Stream<Choice> every() {
    return Stream.concat(pictured.stream(), rest.stream());
  }

  /** {@code A} for 0, {@code Z} for 25, {@code AA} for 26. */
  static String letter(int number) {
    String last = Character.toString('A' + number % 26);
    return number < 26 ? last : letter(number / 26 - 1) + last;
  }
}
