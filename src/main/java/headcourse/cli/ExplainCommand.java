package headcourse.cli;

import headcourse.bench.HeadWork;
import headcourse.choose.NearBy;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.nio.file.Path;
import java.util.List;

/** Says why a head has this number of stones, beside those with one or two more or less. */
record ExplainCommand(Path folder, Console console) {
  int run(Arguments arguments) {
    if (arguments.files().isEmpty() || arguments.files().size() > 2) {
      console.complain("which job, and which opening of it? headcourse explain JOB.yaml D1");
      return Main.WRONG;
    }
    JobFile file = new JobFile(folder, arguments.files().get(0));
    Outcome<Job> read = file.readChosen();
    read.diagnostics().forEach(console::tell);
    if (read.value().isEmpty()) {
      return Main.WRONG;
    }
    Job job = read.value().get();
    String mark = arguments.files().size() == 2 ? arguments.files().get(1) : "";
    List<String> marks = job.openings().stream().map(Opening::mark).toList();
    if (!mark.isEmpty() && !marks.contains(mark)) {
      console.tell(
          Diagnostic.error(
              null,
              "no opening is marked " + mark,
              "the job's openings are " + String.join(", ", marks)));
      return Main.WRONG;
    }
    Outcome<ShopWork> done = WorkUp.of(job, file::beside, console.progress()::at);
    done.diagnostics().forEach(console::tell);
    if (done.value().isEmpty()) {
      return Main.WRONG;
    }
    ShopWork work = done.value().get();
    for (int i = 0; i < marks.size(); i++) {
      if (mark.isEmpty() || mark.equals(marks.get(i))) {
        HeadWork head = work.heads().get(i);
        console.progress().at("trying other numbers of stones for " + marks.get(i));
        List<NearBy> near = NearBy.of(job, i, head.layout());
        console.say(CheckCommand.summary(work, head));
        ExplainTable.lines(work, head, near).forEach(console::say);
      }
    }
    return work.errorsStand() ? Main.FINDINGS : Main.DONE;
  }
}
