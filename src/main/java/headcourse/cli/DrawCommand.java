package headcourse.cli;

import headcourse.cli.Arguments.Output;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.diag.Severity;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.Paper;
import headcourse.job.Papers;
import headcourse.rules.RuleBook;
import headcourse.sheet.SheetFrame;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.function.Predicate;

/** Draws the sheets of jobs. */
record DrawCommand(Path folder, Console console) {
  int run(Arguments arguments) {
    if (arguments.files().isEmpty()) {
      console.complain("which job? headcourse draw JOB.yaml");
      return Main.WRONG;
    }
    Map<String, String> folders = new LinkedHashMap<>();
    int worst = Main.DONE;
    for (String name : arguments.files()) {
      worst = Math.max(worst, one(arguments, name, folders));
    }
    return worst;
  }

  private int one(Arguments arguments, String name, Map<String, String> folders) {
    JobFile file = new JobFile(folder, name);
    Outcome<Job> read = file.read();
    read.diagnostics().forEach(console::tell);
    if (read.value().isEmpty()) {
      return Main.WRONG;
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
    Outcome<ShopWork> done = WorkUp.of(job, file::beside);
    done.diagnostics().forEach(console::tell);
    if (frame.value().isEmpty() || done.value().isEmpty()) {
      return Main.WRONG;
    }
    return write(arguments, file, done.value().get(), frame.value().get());
  }

  private int write(Arguments arguments, JobFile file, ShopWork work, SheetFrame frame) {
    String root = root(arguments);
    Path target = target(arguments, work.job());
    Collection<String> notes = new ConcurrentSkipListSet<>();
    try {
      boolean pictures = work.job().printing().pictures();
      Predicate<Output> wanted = o -> arguments.wants(o, pictures);
      Map<String, byte[]> files =
          new OutputWriter(work, frame, file.bytes(), notes::add).print(wanted);
      // A picture of the head as it was must not lie beside the new sheets.
      boolean elevations = wanted.test(Output.SVG) || wanted.test(Output.PNG);
      new OutputFolder(target, n -> n.matches("elevation-[^.]*\\.(svg|png)"))
          .replace(files, elevations);
      files.keySet().forEach(n -> console.say(root + "/" + work.job().name() + "/" + n));
    } catch (IOException e) {
      console.complain("can't write " + target + ": " + JobFile.reason(e) + "; nothing changed");
      return Main.MACHINE;
    }
    notes.forEach(n -> console.err().println("note: " + n + "; it is on larger paper"));
    RuleBook.summary(work.job(), work.findings()).stream()
        .filter(f -> f.severity() != Severity.NOTE)
        .forEach(f -> console.err().println(CheckCommand.line(f)));
    return work.errorsStand() ? Main.FINDINGS : Main.DONE;
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

  private static Job onPaper(Job job, Paper paper) {
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
