package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.render.pdf.PdfRenderer;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.PdfChecker;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/**
 * A bundle in two languages as it is read out: the second language is marked as such (ISO 14289-1,
 * 7.2: changes of the natural language are declared), and nothing else is.
 */
class TwoLanguagesPdfTest {
  private final StringBuilder spanish = new StringBuilder();
  private final StringBuilder rest = new StringBuilder();

  private void read(List<?> contents, boolean second) {
    for (Object o : contents) {
      if (o instanceof PDMarkedContent m) {
        String lang = m.getProperties() == null ? null : m.getProperties().getString(COSName.LANG);
        read(m.getContents(), second || "es".equals(lang));
      } else if (o instanceof TextPosition t) {
        (second ? spanish : rest).append(t.getUnicode());
      }
    }
  }

  private byte[] file(Bundle bundle, Language language) throws Exception {
    PageSet set =
        SheetBook.compose(SheetCases.DOOR_8.work("letter", language), bundle, Frame.plain());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(set, "seed", out);
    spanish.setLength(0);
    rest.setLength(0);
    try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
      assertEquals(language == Language.ES ? "es" : "en", pdf.getDocumentCatalog().getLanguage());
      for (PDPage page : pdf.getPages()) {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.setSuppressDuplicateOverlappingText(false);
        extractor.processPage(page);
        read(extractor.getMarkedContents(), false);
      }
    }
    return out.toByteArray();
  }

  @Test
  void theSecondLanguageIsDeclared() throws Exception {
    byte[] file = file(Bundle.WALL, Language.EN_ES);
    for (String word : List.of("Precauciones", "puntal", "COLOCAR", "muro")) {
      assertTrue(spanish.indexOf(word) >= 0, word);
      assertFalse(rest.indexOf(word) >= 0, word);
    }
    for (String word : List.of("prop", "ORDER", "Cautions", "wall", "D1")) {
      assertTrue(rest.indexOf(word) >= 0, word);
      assertFalse(spanish.indexOf(word) >= 0, word);
    }
    assertEquals(List.of(), PdfChecker.failures(file, PDFAFlavour.PDFA_2_B, PDFAFlavour.PDFUA_1));
  }

  @Test
  void oneLanguageNeedsNoMarks() throws Exception {
    file(Bundle.BENCH, Language.ES);
    assertEquals("", spanish.toString());
    assertTrue(rest.indexOf("cara") >= 0);
  }
}
