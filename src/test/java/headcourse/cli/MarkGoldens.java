package headcourse.cli;

import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.book.SheetBook;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** The marks of every page of a demo job, a text for each bundle. */
final class MarkGoldens {
  static final Path KEPT = Path.of("src/test/resources/headcourse/marks");

  private MarkGoldens() {}

  static Map<String, String> of(String name) {
    JobFile file = new JobFile(Path.of(""), "jobs/" + name);
    Job job = file.read().value().orElseThrow();
    SheetFrame frame = Frames.of(job, file).value().orElseThrow();
    ShopWork work = WorkUp.of(job, file::beside).value().orElseThrow();
    Map<String, String> texts = new TreeMap<>();
    for (Bundle b : Bundle.values()) {
      PageSet set = SheetBook.compose(work, b, frame);
      texts.put(b.word() + ".txt", MarkLines.of(set));
    }
    return texts;
  }
}
