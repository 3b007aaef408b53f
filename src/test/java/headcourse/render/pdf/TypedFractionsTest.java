package headcourse.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Bundle;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

/** A size is found by typing it, though its fraction is set in small digits. */
class TypedFractionsTest {
  /**
   * Text as a reader searches it: what glyphs stand for comes before the glyphs (ISO 32000-1,
   * 14.9.4).
   */
  private static final class Searched extends PDFTextStripper {
    private final StringBuilder text = new StringBuilder();
    private final Deque<Boolean> replaced = new ArrayDeque<>();

    Searched() throws IOException {
      setSuppressDuplicateOverlappingText(false);
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
      String actual = properties == null ? null : properties.getString(COSName.ACTUAL_TEXT);
      if (actual != null) {
        text.append(actual);
      }
      replaced.push(actual != null);
    }

    @Override
    public void endMarkedContentSequence() {
      replaced.pop();
    }

    @Override
    protected void processTextPosition(TextPosition position) {
      if (!replaced.contains(true)) {
        text.append(position.getUnicode());
      }
    }
  }

  @Test
  void sevenAndSevenSixteenthsIsFound() throws IOException {
    JobMaker m = JobMaker.one();
    m.first().target = Length.inches(7.4375);
    m.first().width = Length.inches(72);
    ShopWork work = WorkUp.of(m.make()).value().orElseThrow();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(SheetBook.compose(work, Bundle.BENCH, Frame.plain()), "x", out);
    try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
      Searched s = new Searched();
      s.getText(pdf);
      String text = s.text.toString();
      assertTrue(text.matches("(?s).*\\d \\d{1,2}/\\d{1,2}\".*"), "no size to be found");
      assertFalse(
          text.matches("(?s).*[⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉⁄½¼¾⅛⅜⅝⅞].*"), "a small digit stands alone");
    }
  }

  @Test
  void fractionsAreTyped() {
    assertEquals("7/16", SmallFraction.typed("⁷⁄₁₆"));
    assertEquals("31/32", SmallFraction.typed("³¹⁄₃₂"));
    assertEquals("3/8", SmallFraction.typed("⅜"));
    assertTrue(SmallFraction.IN_TEXT.matcher("7 ⁷⁄₁₆\"").find());
  }
}
