package headcourse.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.TreeSet;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Holds a PDF against standards by an independent checker, veraPDF. */
public final class PdfChecker {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private PdfChecker() {}

  /**
   * What fails of any of some standards: standard, clause, message and place of each; none where
   * the file conforms to all. The file is parsed once.
   */
  public static List<String> failures(byte[] file, PDFAFlavour... flavours) throws Exception {
    TreeSet<String> failures = new TreeSet<>();
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(file), flavours[0], flavours[0]);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(List.of(flavours))) {
      parser.setFlavours(List.of(flavours));
      List<ValidationResult> results = validator.validateAll(parser);
      assertEquals(flavours.length, results.size());
      for (ValidationResult r : results) {
        assertTrue(r.getTotalAssertions() > 20, "hardly anything was looked at");
        for (TestAssertion a : r.getTestAssertions()) {
          if (a.getStatus() == TestAssertion.Status.FAILED) {
            String what = a.getRuleId().getClause() + " " + a.getMessage();
            String place = a.getLocation().getContext();
            failures.add(r.getPDFAFlavour() + " " + what + " at " + place);
          }
        }
      }
    }
    return List.copyOf(failures);
  }
}
