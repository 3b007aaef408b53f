package headcourse.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The lettering that the build cuts down and its metrics, against AWT's reader of TrueType files,
 * which shares no code with FontBox.
 */
class FaceTest {
  private static final FontRenderContext UNHINTED = new FontRenderContext(null, false, true);

  /** A size at which AWT's advances are the font's own units. */
  private static Font reference(Face face) throws Exception {
    String name = "/headcourse/fonts/" + face.postScriptName() + ".ttf";
    try (var in = FaceTest.class.getResourceAsStream(name)) {
      return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(2048f);
    }
  }

  /**
   * Default-ignorable characters that are no format characters (Unicode, DerivedCoreProperties):
   * from JDK 25 on a font shows them, as nothing.
   */
  private static final String IGNORABLE =
      "\u034f\u115f\u1160\u17b4\u17b5\u180b\u180c\u180d\u180f\u2065\u3164";

  private static double advance(Font font, int c) {
    return font.createGlyphVector(UNHINTED, Character.toString(c)).getGlyphMetrics(0).getAdvance();
  }

  @ParameterizedTest
  @EnumSource
  void charactersAndAdvancesAgree(Face face) throws Exception {
    Font font = reference(face);
    int found = 0;
    for (int c = 33; c < 0xE000; c++) {
      if (Character.isISOControl(c)
          || Character.getType(c) == Character.FORMAT
          || IGNORABLE.indexOf(c) >= 0) {
        continue;
      }
      assertEquals(font.canDisplay(c), face.has(c), Integer.toHexString(c));
      if (face.has(c) && Character.getType(c) != Character.NON_SPACING_MARK) {
        double units = face.width(Character.toString(c), Face.CAP_HEIGHT) * 2048;
        assertEquals(advance(font, c), units, 0.5, Integer.toHexString(c));
        found++;
      }
    }
    assertTrue(found > 1500, "" + found);
  }

  @ParameterizedTest
  @EnumSource
  void everythingOnASheetHasAGlyph(Face face) {
    String needed = "0123456789 ¹²³⁴⁵⁶⁷⁸⁹⁰⁄₀₁₂₃₄₅₆₇₈₉½⅛⅜⅝⅞¼¾°⌀±×·′″∠△←↑→↓éñáíóúü¿¡–—…“”‘’≤≥";
    needed.codePoints().forEach(c -> assertTrue(face.has(c), Character.toString(c)));
  }

  /** Names of many languages can be printed. */
  @ParameterizedTest
  @EnumSource
  void namesHaveTheirLetters(Face face) {
    String names = "ÅÄÖØÆßŁódźČešťĞİşŐűÀÇÊÎÔÑÃõ ΑΩβ ДЖЩя ₤€£№ ☐☑✓✗";
    names.codePoints().forEach(c -> assertTrue(face.has(c), Character.toString(c)));
  }

  @ParameterizedTest
  @EnumSource
  void widthIsTheSumOfAdvances(Face face) throws Exception {
    Font font = reference(face);
    double sum = 0;
    for (int c : "AVAT 12′-4½″".codePoints().toArray()) {
      sum += advance(font, c);
    }
    double em = 3.5 / 0.729;
    assertEquals(sum / 2048 * em, face.width("AVAT 12′-4½″", 3.5), 1e-3);
    // The height of a capital H, by its outline.
    double cap = font.createGlyphVector(UNHINTED, "H").getOutline().getBounds2D().getHeight();
    assertEquals(Face.CAP_HEIGHT, cap / 2048, 0.001);
  }
}
