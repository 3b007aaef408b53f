package headcourse.cli;

import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.form.MeasuringForm;
import headcourse.text.Words;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

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
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
      PdfRenderer.render(MeasuringForm.of(paper, Words.of("en+es").withTongues()), "form", out);
      Path path = folder.resolve(name);
      if (path.getParent() != null) {
        Files.createDirectories(path.getParent());
      }
      Files.write(path, out.toByteArray(), StandardOpenOption.CREATE_NEW);
      console.say(name);
      if (arguments.open()) {
        console.viewer().show(path);
      }
      return Main.DONE;
    } catch (FileAlreadyExistsException e) {
      console.complain(name + " is there already and stays as it is; give another name");
      return Main.WRONG;
    } catch (InvalidPathException e) {
      console.complain("no file can have the name " + name);
      return Main.WRONG;
    } catch (IOException e) {
      console.complain("can't write " + name + ": " + JobFile.reason(e));
      return Main.MACHINE;
    }
  }
}
