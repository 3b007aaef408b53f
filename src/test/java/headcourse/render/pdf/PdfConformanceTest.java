package headcourse.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

  /** All that a machine can tell but the claim itself, which real table tags would have to earn. */
  @Test
  void fileIsAccessibleButForTheClaim() throws Exception {
    List<String> failures = PdfChecker.failures(file(), PDFAFlavour.PDFUA_1);
    assertEquals(1, failures.size(), failures.toString());
    assertTrue(failures.get(0).startsWith("5 The PDF/UA version"), failures.get(0));
  }

  @Test
  void picturesAndColoursStayArchivable() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(SamplePages.coloured(), "seed", out);
    assertEquals(List.of(), PdfChecker.failures(out.toByteArray(), PDFAFlavour.PDFA_2_B));
  }
}
