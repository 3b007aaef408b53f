package headcourse.cli;

import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.form.MeasuringForm;
import headcourse.text.Words;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;

/** Writes the blank measuring sheet, to be filled in on site. */
record FormCommand(Path folder, Console console) {
  private static final String USUAL = "measuring-sheet.pdf";

  int run(Arguments arguments) {
    if (arguments.files().size() > 1) {
      console.complain("give the name of one file to write: headcourse form [FILE.pdf]");
      return Main.WRONG;
    }
    String name = arguments.files().isEmpty() ? USUAL : arguments.files().get(0);
    Paper paper =
        arguments.paper() == null ? PaperSizes.named("letter").orElseThrow() : arguments.paper();
    return new NewFile(folder, console)
        .write(
            name,
            () -> sheet(paper),
            path -> {
              console.say(name);
              if (arguments.open()) {
                console.viewer().show(path);
              }
              return Main.DONE;
            });
  }

  private static byte[] sheet(Paper paper) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
    PdfRenderer.render(MeasuringForm.of(paper, Words.of("en+es").withTongues()), "form", out);
    return out.toByteArray();
  }
}
