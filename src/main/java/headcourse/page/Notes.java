package headcourse.page;

import headcourse.bench.HeadWork;
import headcourse.cure.Advice;
import headcourse.cure.Cure;
import headcourse.diag.Diagnostic;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.yaml.JobOutline;
import headcourse.rules.Finding;
import headcourse.rules.RuleBook;
import headcourse.text.Words;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is said of a job: by its reader, where a head can't be set out, and by the rules. */
final class Notes {
  /** The language that messages about the file are in. */
  private static final String OURS = "en";

  /** The rule that heads which would fall if they were solid are told by. */
  private static final String HANGS = "reads-as-hanging";

  /**
   * One thing said.
   *
   * @param path the value that it is about; empty where it is about none
   * @param severity its word
   * @param text what is said
   * @param hints what to do, in words
   * @param source where a rule is from; empty for messages about the file
   * @param accepted why it was accepted; empty where it was not
   * @param cures changes to the file, each list one cure
   * @param language tag of the text's language
   */
  record Note(
      String path,
      String severity,
      String text,
      List<String> hints,
      String source,
      String accepted,
      List<List<Change>> cures,
      String language) {}

  private final List<Note> all = new ArrayList<>();

  List<Note> all() {
    return all;
  }

  /**
   * Adds messages about the file.
   *
   * @param outline the file as it was read; null where it could not be
   * @param advised what was offered for the heads that can't be set out
   */
  void add(JobOutline outline, List<Diagnostic> said, List<Advice> advised) {
    for (Diagnostic d : said) {
      Optional<Advice> advice =
          advised.stream().filter(a -> a.problems().get(0).equals(d)).findFirst();
      List<Cure> cures = advice.map(Advice::cures).orElse(List.of());
      List<String> offered = cures.stream().map(Cure::words).toList();
      List<String> hints = d.hints().stream().filter(h -> !offered.contains(h)).toList();
      String path = outline == null ? "" : outline.at(d.span());
      String place = path.isEmpty() && d.span() != null ? d.span().place() + ": " : "";
      all.add(
          new Note(
              path,
              d.severity().word(),
              place + d.message(),
              hints,
              "",
              "",
              cures.stream().map(Cure::changes).toList(),
              OURS));
    }
  }

  /** Adds what the rules say of a job that is worked out. */
  void add(ShopWork work, Words words) {
    Job job = work.job();
    List<String> marks = job.openings().stream().map(Opening::mark).toList();
    for (Finding f : RuleBook.summary(job, work.findings())) {
      int opening = f.opening() == null ? -1 : marks.indexOf(f.opening());
      String status = words.say("rule.status-" + f.status().name().toLowerCase(Locale.ROOT));
      boolean cured = f.rule().equals(HANGS) && opening >= 0;
      all.add(
          new Note(
              RulePlaces.of(f.rule(), opening),
              f.severity().word(),
              f.message(),
              List.of(),
              f.status() == Finding.SourceStatus.PRACTICE ? f.source() : f.source() + "; " + status,
              f.accepted() == null ? "" : f.accepted(),
              cured ? cures(work.heads().get(opening)) : List.of(),
              words.tag()));
    }
  }

  private static List<List<Change>> cures(HeadWork head) {
    return head.asSolid() == null ? List.of() : head.asSolid().cures();
  }
}
