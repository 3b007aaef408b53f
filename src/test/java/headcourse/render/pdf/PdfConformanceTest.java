package headcourse.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.testing.SamplePages;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

  @ParameterizedTest
  @ValueSource(strings = {"2b", "ua1"})
  void fileConforms(String flavour) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(SamplePages.letter(3), "seed", out);
    assertEquals(List.of(), failures(out.toByteArray(), PDFAFlavour.byFlavourId(flavour)));
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
