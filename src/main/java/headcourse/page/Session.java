package headcourse.page;

import headcourse.bench.HeadWork;
import headcourse.choose.Letters;
import headcourse.cure.Advice;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.job.yaml.JobEdit;
import headcourse.job.yaml.JobOutline;
import headcourse.job.yaml.JobReader;
import headcourse.job.yaml.KeyTable;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import headcourse.text.Languages;
import headcourse.text.Words;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * One job under the user's hands. The file is the record: it is read anew for every request, and
 * what is typed is written into it as it then is, so that nothing that was saved from elsewhere is
 * lost.
 */
final class Session {
  /** How many edits can be taken back. */
  private static final int UNDOES = 200;

  private static final KeyTable TABLE = KeyTable.of(Shapes.definitions(), RuleBook.limits());
  private static final JobEdit EDIT = new JobEdit(TABLE);

  /** As often a file is read anew that somebody else is saving just now. */
  private static final int TRIES = 5;

  private final Desk desk;
  private final String language;
  private final Deque<Step> done = new ArrayDeque<>();
  private String jobs = "en";

  /** What the file held before an edit of the page, and after it. */
  private record Step(byte[] before, byte[] after) {}

  Session(Desk desk, String language) {
    this.desk = desk;
    this.language = language;
  }

  Desk desk() {
    return desk;
  }

  KeyTable table() {
    return TABLE;
  }

  /** The words of the page: the language asked for, or the first of the job's. */
  synchronized Words words() {
    return Words.of(language.isEmpty() ? jobs : language).singly().get(0);
  }

  /** The file as it is, before it is read as a job. */
  Outcome<JobOutline> outline(byte[] bytes) {
    Outcome<JobOutline> outline = JobOutline.of(desk.name(), bytes);
    outline
        .value()
        .map(o -> o.value("language").orElse("en"))
        .filter(Languages.choices()::contains)
        .ifPresent(this::speak);
    return outline;
  }

  private synchronized void speak(String tag) {
    jobs = tag;
  }

  /** The file with changes that are not written yet. */
  Outcome<byte[]> typed(List<Change> changes) throws IOException {
    return EDIT.of(desk.name(), desk.read(), changes);
  }

  /** Reads a job. */
  Outcome<Job> job(byte[] bytes) {
    Outcome<Job> read =
        JobReader.read(desk.name(), bytes, Shapes.definitions(), RuleBook.limits(), desk::beside);
    if (read.value().isEmpty()) {
      return read;
    }
    Outcome<Job> settled = Letters.settled(read.value().get());
    List<Diagnostic> said = new ArrayList<>(read.diagnostics());
    said.addAll(settled.diagnostics());
    return new Outcome<>(settled.value(), said);
  }

  /** A head as the job has it, and the job; why not, where it can't be set out. */
  Outcome<HeadWork> head(Job job, int opening) {
    return opening < job.openings().size() ? WorkUp.head(job, opening) : Outcome.failed(List.of());
  }

  /** All that is said of a job's file. */
  Notes notes(byte[] bytes) {
    Notes notes = new Notes();
    Outcome<JobOutline> outline = outline(bytes);
    if (outline.value().isEmpty()) {
      notes.add(null, outline.diagnostics(), List.of());
      return notes;
    }
    Outcome<Job> read = job(bytes);
    notes.add(outline.value().get(), read.diagnostics(), List.of());
    if (read.value().isPresent()) {
      List<Advice> advised = new ArrayList<>();
      Outcome<ShopWork> work =
          WorkUp.advised(inOurs(read.value().get()), desk::beside, advised::add);
      notes.add(outline.value().get(), work.diagnostics(), advised);
      work.value().ifPresent(w -> notes.add(w, words()));
    }
    return notes;
  }

  /** The job with the page's language, for what is said of it. */
  private Job inOurs(Job job) {
    String tag = words().tag();
    if (job.language().word().equals(tag) || job.spans().rewriting() == null) {
      return job;
    }
    Change speaks = new Change("language", tag, "as the page");
    return job.spans().rewriting().with(List.of(speaks)).value().orElse(job);
  }

  /**
   * Writes changes into the file.
   *
   * @return nothing; or why it was not written
   */
  synchronized List<Diagnostic> write(List<Change> changes) throws IOException {
    for (int i = 0; i < TRIES; i++) {
      byte[] was = desk.read();
      Outcome<byte[]> now = EDIT.of(desk.name(), was, changes);
      if (now.value().isEmpty()) {
        return now.diagnostics();
      }
      if (Arrays.equals(was, now.value().get())) {
        return List.of();
      }
      if (desk.write(was, now.value().get())) {
        done.push(new Step(was, now.value().get()));
        if (done.size() > UNDOES) {
          done.removeLast();
        }
        return List.of();
      }
    }
    throw new IOException(desk.name() + " is being saved by another program; try again");
  }

  /** Whether the last edit can be taken back: nobody else has saved the file since. */
  synchronized boolean undoes(byte[] bytes) {
    return !done.isEmpty() && Arrays.equals(done.peek().after(), bytes);
  }

  /** Takes the last edit back. */
  synchronized void undo() throws IOException {
    if (undoes(desk.read()) && desk.write(done.peek().after(), done.peek().before())) {
      done.pop();
    }
  }

  /** The job worked out as the file has it, or none where it can't be. */
  Optional<ShopWork> worked() throws IOException {
    return job(desk.read()).value().flatMap(j -> WorkUp.of(j, desk::beside).value());
  }
}
