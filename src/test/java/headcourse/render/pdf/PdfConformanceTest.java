package headcourse.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.testing.PdfChecker;
import headcourse.testing.SamplePages;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The finished file against ISO 19005-2 and ISO 14289-1, by an independent checker, veraPDF. */
class PdfConformanceTest {
  private static byte[] file() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(SamplePages.letter(3), "seed", out);
    return out.toByteArray();
  }

  @Test
  void fileIsArchivable() throws Exception {
    assertEquals(List.of(), PdfChecker.failures(file(), PDFAFlavour.PDFA_2_B));
  }

  @Test
  void fileIsAccessible() throws Exception {
    assertEquals(List.of(), PdfChecker.failures(file(), PDFAFlavour.PDFUA_1));
  }

  /** The checker looks at tables: a row that is too short is found. */
  @Test
  void unevenTableIsFound() throws Exception {
    Mark.Label text = new Mark.Label(new Point(30, 30), "1", Lettering.BODY, Mark.Align.START, 0);
    Mark cell = new Mark.Group(Mark.Role.CELL, "", "", List.of(text));
    Mark two = new Mark.Group(Mark.Role.ROW, "", "", List.of(cell, cell));
    Mark one = new Mark.Group(Mark.Role.ROW, "", "", List.of(cell));
    for (Mark second : List.of(one, two)) {
      Mark table = new Mark.Group(Mark.Role.TABLE, "", "", List.of(two, second));
      Page page = new Page(210, 297, "1", "1", List.of(table), List.of());
      PageSet set = new PageSet(Bundle.BENCH, "A table", "", "en", "", "", List.of(page));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      PdfRenderer.render(set, "seed", out);
      List<String> failures = PdfChecker.failures(out.toByteArray(), PDFAFlavour.PDFUA_1);
      assertEquals(second == two, failures.isEmpty(), failures::toString);
    }
  }

  @Test
  void picturesAndColoursStayFit() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(SamplePages.coloured(), "seed", out);
    assertEquals(
        List.of(),
        PdfChecker.failures(out.toByteArray(), PDFAFlavour.PDFA_2_B, PDFAFlavour.PDFUA_1));
  }
}
