package headcourse.testing;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.TreeSet;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Holds a PDF against a standard by an independent checker, veraPDF. */
public final class PdfChecker {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private PdfChecker() {}

  /** What fails: clause, message and place of each; none where the file conforms. */
  public static List<String> failures(byte[] file, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      TreeSet<String> failures = new TreeSet<>();
      for (TestAssertion a : validator.validate(parser).getTestAssertions()) {
        if (a.getStatus() == TestAssertion.Status.FAILED) {
          String place = a.getLocation().getContext();
          failures.add(a.getRuleId().getClause() + " " + a.getMessage() + " at " + place);
        }
      }
      return List.copyOf(failures);
    }
  }
}
