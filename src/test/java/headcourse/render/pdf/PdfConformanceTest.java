package headcourse.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.SamplePages;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The finished file against ISO 19005-2 and ISO 14289-1, by an independent checker, veraPDF. */
class PdfConformanceTest {
  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static byte[] file() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(SamplePages.letter(3), "seed", out);
    return out.toByteArray();
  }

  @Test
  void fileIsArchivable() throws Exception {
    assertEquals(List.of(), failures(file(), PDFAFlavour.PDFA_2_B));
  }

  /** All that a machine can tell but the claim itself, which real table tags would have to earn. */
  @Test
  void fileIsAccessibleButForTheClaim() throws Exception {
    List<String> failures = failures(file(), PDFAFlavour.PDFUA_1);
    assertEquals(1, failures.size(), failures.toString());
    assertTrue(failures.get(0).startsWith("5 The PDF/UA version"), failures.get(0));
  }

  @Test
  void picturesAndColoursStayArchivable() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(SamplePages.coloured(), "seed", out);
    assertEquals(List.of(), failures(out.toByteArray(), PDFAFlavour.PDFA_2_B));
  }

  private static List<String> failures(byte[] file, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      TreeSet<String> failures = new TreeSet<>();
      for (TestAssertion a : validator.validate(parser).getTestAssertions()) {
        if (a.getStatus() == TestAssertion.Status.FAILED) {
          failures.add(
              a.getRuleId().getClause()
                  + " "
                  + a.getMessage()
                  + " at "
                  + a.getLocation().getContext());
        }
      }
      return List.copyOf(failures);
    }
  }
}
