package headcourse.cli;

import headcourse.choose.Choices;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.drawing.PageSet;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.render.pdf.PdfRenderer;
import headcourse.render.svg.SvgRenderer;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.choose.ChoiceSheets;
import headcourse.sheet.choose.ChoiceSvg;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Shows what heads there are to choose from, side by side. */
record ChooseCommand(Path folder, Console console) {
  int run(Arguments arguments) {
    if (arguments.files().isEmpty() || arguments.files().size() > 2) {
      console.complain("which job, and which opening of it? headcourse choose JOB.yaml D1");
      return Main.WRONG;
    }
    JobFile file = new JobFile(folder, arguments.files().get(0));
    Outcome<Job> read = file.read();
    read.diagnostics().forEach(console::tell);
    if (read.value().isEmpty()) {
      return Main.WRONG;
    }
    Job job = DrawCommand.onPaper(read.value().get(), arguments.paper());
    String mark = arguments.files().size() == 2 ? arguments.files().get(1) : "";
    List<Choices> all = new ArrayList<>();
    List<Diagnostic> wrong = choices(job, mark, all);
    wrong.forEach(console::tell);
    if (!wrong.isEmpty()) {
      return Main.WRONG;
    }
    Outcome<SheetFrame> frame = Frames.of(job, file);
    frame.diagnostics().forEach(console::tell);
    if (frame.value().isEmpty()) {
      return Main.WRONG;
    }
    for (Choices c : all) {
      ChoiceTable.lines(c).forEach(console::say);
    }
    int written = write(arguments, file, job, all, frame.value().get());
    boolean faulty = all.stream().anyMatch(c -> c.pictured().get(0).faulty());
    return written == Main.DONE && faulty ? Main.FINDINGS : written;
  }

  private static List<Diagnostic> choices(Job job, String mark, List<Choices> all) {
    List<Diagnostic> wrong = new ArrayList<>();
    List<String> marks = job.openings().stream().map(Opening::mark).toList();
    if (!mark.isEmpty() && !marks.contains(mark)) {
      wrong.add(
          Diagnostic.error(
              null,
              "no opening is marked " + mark,
              "the job's openings are " + String.join(", ", marks)));
      return wrong;
    }
    for (int i = 0; i < marks.size(); i++) {
      if (mark.isEmpty() || marks.get(i).equals(mark)) {
        Outcome<Choices> found = Choices.checked(job, i);
        wrong.addAll(found.diagnostics());
        found.value().ifPresent(all::add);
      }
    }
    return wrong;
  }

  private int write(
      Arguments arguments, JobFile file, Job job, List<Choices> all, SheetFrame frame) {
    String root = arguments.out().isEmpty() ? "out" : arguments.out();
    Path target = folder.resolve(root).resolve(job.name());
    Map<String, Content> files = new LinkedHashMap<>();
    try {
      PageSet set = ChoiceSheets.compose(all, frame);
      String seed = OutputWriter.hash(file.bytes()) + "choose";
      files.put("choose.pdf", Scratch.inMemory(out -> PdfRenderer.render(set, seed, out)));
      for (Choices c : all) {
        String name = all.size() == 1 ? "choose" : "choose-" + c.opening().mark();
        files.put(name + ".svg", Scratch.of(SvgRenderer.render(ChoiceSvg.page(c), name)));
      }
      new OutputFolder(target, n -> n.matches("choose(-[^.]*)?\\.svg")).replace(files, true);
      files.keySet().forEach(n -> console.say(root + "/" + job.name() + "/" + n));
    } catch (IOException e) {
      console.complain("can't write " + target + ": " + JobFile.reason(e) + "; nothing changed");
      return Main.MACHINE;
    }
    return Main.DONE;
  }
}
