package headcourse.cli;

import headcourse.cli.Arguments.Output;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.diag.Severity;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Paper;
import headcourse.job.Papers;
import headcourse.job.yaml.JobReader;
import headcourse.rules.RuleBook;
import headcourse.sheet.SheetFrame;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.function.Predicate;

/** Draws the sheets of jobs. */
record DrawCommand(Path folder, Console console) {
  /** Names of files that go when a set is drawn that no longer has them. */
  private static final String OURS =
      "elevation-[^.]*\\.(svg|png)|(bench|wall|full-size)-[^.]*\\.pdf";

  /** What is opened first, of what was written. */
  private static final List<String> FIRST =
      List.of("index\\.html", "wall.*", "elevation-.*", "bench.*", ".*\\.pdf");

  int run(Arguments arguments) {
    if (arguments.files().isEmpty()) {
      console.complain("which job? headcourse draw JOB.yaml");
      return Main.WRONG;
    }
    Map<String, String> folders = new LinkedHashMap<>();
    int worst = Main.DONE;
    for (String name : arguments.files()) {
      worst = Math.max(worst, one(arguments, new JobFile(folder, name), folders));
    }
    return worst;
  }

  /** Draws a job; where it is refused, says what of an earlier one lies in its folder. */
  int one(Arguments arguments, JobFile file, Map<String, String> folders) {
    String name = file.name();
    console.progress().at("reading " + name);
    Outcome<Job> read = file.readChosen();
    read.diagnostics().forEach(console::tell);
    if (read.value().isEmpty()) {
      return refused(folder.resolve(root(arguments)).resolve(JobReader.folder(name)));
    }
    Job job = onPaper(read.value().get(), arguments.paper());
    String other = folders.putIfAbsent(job.name(), name);
    if (other != null) {
      console.complain(name + " and " + other + " would write to the same folder; rename one");
      return Main.WRONG;
    }
    if (writesOver(arguments, file, job)) {
      console.tell(
          Diagnostic.error(
              job.spans().of("job.revision-of"),
              job.info().revisionOf() + " is what this job writes over when it is drawn",
              "keep a copy of it under another name when it is sent out, and name that"));
      return Main.WRONG;
    }
    Outcome<SheetFrame> frame = Frames.of(job, file);
    frame.diagnostics().forEach(console::tell);
    if (!arguments.opening().isEmpty() && !marks(job).contains(arguments.opening())) {
      console.tell(
          Diagnostic.error(
              null,
              name + " has no opening marked " + arguments.opening(),
              "its openings are " + String.join(", ", marks(job))));
      return Main.WRONG;
    }
    Outcome<ShopWork> done = WorkUp.of(job, file::beside, console.progress()::at);
    done.diagnostics().forEach(console::tell);
    if (frame.value().isEmpty() || done.value().isEmpty()) {
      return refused(target(arguments, job));
    }
    return write(arguments, file, done.value().get(), frame.value().get());
  }

  private static List<String> marks(Job job) {
    return job.openings().stream().map(Opening::mark).toList();
  }

  private int refused(Path target) {
    Age.ofSheets(target)
        .ifPresent(
            age ->
                console.note(
                    "nothing was drawn; the sheets in "
                        + shown(target)
                        + " are older ("
                        + age
                        + ") and don't show this job as it is now"));
    return Main.WRONG;
  }

  /** A place as the user would name it. */
  private String shown(Path target) {
    boolean within = !folder.toString().isEmpty() && target.startsWith(folder);
    return (within ? folder.relativize(target) : target).toString().replace('\\', '/');
  }

  private int write(Arguments arguments, JobFile file, ShopWork work, SheetFrame frame) {
    String root = root(arguments);
    Path target = target(arguments, work.job());
    Collection<String> notes = new ConcurrentSkipListSet<>();
    List<String> written = new ArrayList<>();
    try (Scratch scratch = new Scratch()) {
      boolean pictures = work.job().printing().pictures();
      Predicate<Output> wanted = o -> arguments.wants(o, pictures);
      Map<String, Content> files =
          new OutputWriter(work, frame, file.bytes(), scratch, notes::add, console.progress()::at)
              .print(wanted, arguments.opening());
      if (files.isEmpty()) {
        console.complain("no kind after --only is of one opening alone; leave out --opening");
        return Main.WRONG;
      }
      // A picture of the head as it was must not lie beside the new sheets.
      boolean whole = arguments.opening().isEmpty();
      boolean elevations = wanted.test(Output.SVG) || wanted.test(Output.PNG);
      new OutputFolder(target, n -> n.matches(OURS)).replace(files, whole && elevations);
      written.addAll(files.keySet());
      files.keySet().forEach(n -> console.say(root + "/" + work.job().name() + "/" + n));
    } catch (IOException e) {
      console.complain("can't write " + target + ": " + JobFile.reason(e) + "; nothing changed");
      return Main.MACHINE;
    }
    notes.forEach(n -> console.note("note: " + n + "; it is on larger paper"));
    RuleBook.summary(work.job(), work.findings()).stream()
        .filter(f -> f.severity() != Severity.NOTE)
        .forEach(f -> console.note(CheckCommand.line(f)));
    closing(arguments, target, written);
    return work.errorsStand() ? Main.FINDINGS : Main.DONE;
  }

  /** The last line: what was written, where, and what to open first. */
  private void closing(Arguments arguments, Path target, List<String> written) {
    String first =
        FIRST.stream()
            .flatMap(f -> written.stream().filter(n -> n.matches(f)))
            .findFirst()
            .orElse(written.get(0));
    String place = shown(target);
    console.note(
        (written.size() == 1 ? "1 file" : written.size() + " files")
            + " in "
            + place
            + "; open first: "
            + place
            + "/"
            + first);
    if (arguments.open()) {
      try {
        console.viewer().show(target.resolve(first));
      } catch (IOException e) {
        console.complain("can't open " + place + "/" + first + ": " + JobFile.reason(e));
      }
    }
  }

  // Compared with itself, the second drawing would say that nothing changed.
  private boolean writesOver(Arguments arguments, JobFile file, Job job) {
    if (job.info().revisionOf().isEmpty() || !arguments.wants(Output.JSON, false)) {
      return false;
    }
    Path written = target(arguments, job).resolve("layout.json");
    return file.place(job.info().revisionOf())
        .filter(p -> p.toAbsolutePath().normalize().equals(written.toAbsolutePath().normalize()))
        .isPresent();
  }

  private Path target(Arguments arguments, Job job) {
    return folder.resolve(root(arguments)).resolve(job.name());
  }

  private static String root(Arguments arguments) {
    return arguments.out().isEmpty() ? "out" : arguments.out();
  }

  static Job onPaper(Job job, Paper paper) {
    if (paper == null) {
      return job;
    }
    Map<Bundle, Paper> all = new EnumMap<>(Bundle.class);
    for (Bundle b : Bundle.values()) {
      all.put(b, paper);
    }
    return job.withPapers(new Papers(all));
  }
}
