package headcourse.sheet;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.book.SheetBook;
import headcourse.testing.PageInspector;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a case's bundle to look at: case, paper, language, bundle, file. */
public final class SheetLook {
  private SheetLook() {}

  /** Runs it. */
  public static void main(String[] args) throws Exception {
    for (int i = 0; i + 4 < args.length; i += 5) {
      Language language =
          java.util.Arrays.stream(Language.values())
              .filter(l -> l.word().equals(args[2]))
              .findFirst()
              .orElseThrow();
      PageSet set =
          SheetBook.compose(
              SheetCases.valueOf(args[i]).work(args[i + 1], language),
              Bundle.valueOf(args[i + 3]),
              new PlainFrame());
      try (OutputStream out = Files.newOutputStream(Path.of(args[i + 4]))) {
        PdfRenderer.render(set, "x", out);
      }
      for (Page p : set.pages()) {
        PageInspector.faults(p).forEach(System.out::println);
      }
    }
  }
}
