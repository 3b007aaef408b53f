package headcourse.sheet;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.PageInspector;
import headcourse.testing.RandomJobs;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Writes bundles to look at. Five arguments each: a case of {@link SheetCases}, a curved shape or a
 * seed; paper; language; bundle; file.
 */
public final class SheetLook {
  private SheetLook() {}

  /** Runs it. */
  public static void main(String[] args) throws IOException {
    for (int i = 0; i + 4 < args.length; i += 5) {
      ShopWork work = work(args[i], args[i + 1], args[i + 2]);
      PageSet set = SheetBook.compose(work, Bundle.valueOf(args[i + 3]), Frame.plain());
      try (OutputStream out = Files.newOutputStream(Path.of(args[i + 4]))) {
        PdfRenderer.render(set, "look", out);
      }
      for (Page p : set.pages()) {
        PageInspector.faults(p).forEach(System.out::println);
      }
    }
  }

  private static ShopWork work(String what, String paper, String word) {
    Language language =
        Arrays.stream(JobMaker.LANGUAGES)
            .filter(l -> l.word().equals(word))
            .findFirst()
            .orElseThrow();
    if (what.matches("[0-9]+")) {
      var maker = RandomJobs.flat(Long.parseLong(what));
      maker.paper = paper;
      maker.language = language;
      return WorkUp.of(maker.make()).value().orElseThrow();
    }
    return what.matches("[A-Z_0-9]+")
        ? SheetCases.valueOf(what).work(paper, language)
        : SolvedSheetsTest.curved(what, paper, language);
  }
}
