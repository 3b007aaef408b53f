package headcourse.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The faces as we read them against FontBox, an independent reader of TrueType files. */
class FaceTest {
  private static TrueTypeFont reference(Face face) throws Exception {
    String name = "/headcourse/fonts/" + face.postScriptName() + ".ttf";
    try (var in = FaceTest.class.getResourceAsStream(name)) {
      return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
    }
  }

  @ParameterizedTest
  @EnumSource
  void glyphsAndAdvancesAgree(Face face) throws Exception {
    try (TrueTypeFont font = reference(face)) {
      assertEquals(font.getName(), face.postScriptName());
      assertEquals(font.getUnitsPerEm(), face.font().unitsPerEm());
      CmapLookup cmap = font.getUnicodeCmapLookup();
      int found = 0;
      for (int c = 32; c <= 0xFFFF; c++) {
        int glyph = cmap.getGlyphId(c);
        assertEquals(glyph, face.font().glyph(c), Integer.toHexString(c));
        assertEquals(font.getAdvanceWidth(glyph), face.font().advance(glyph));
        found += glyph == 0 ? 0 : 1;
      }
      assertTrue(found > 3000);
    }
  }

  @ParameterizedTest
  @EnumSource
  void everythingOnASheetHasAGlyph(Face face) {
    String needed = "0123456789 ¹²³⁴⁵⁶⁷⁸⁹⁰⁄₀₁₂₃₄₅₆₇₈₉½⅛⅜⅝⅞¼¾°⌀±×·′″∠△←↑→↓éñáíóúü¿¡–—…“”‘’≤≥";
    needed.codePoints().forEach(c -> assertTrue(face.has(c), Character.toString(c)));
  }

  @ParameterizedTest
  @EnumSource
  void widthIsTheSumOfAdvances(Face face) throws Exception {
    try (TrueTypeFont font = reference(face)) {
      CmapLookup cmap = font.getUnicodeCmapLookup();
      double sum = 0;
      for (int c : "AVAT 12′-4½″".codePoints().toArray()) {
        sum += font.getAdvanceWidth(cmap.getGlyphId(c));
      }
      double em = 3.5 / 0.729;
      assertEquals(sum / font.getUnitsPerEm() * em, face.width("AVAT 12′-4½″", 3.5), 1e-9);
      // The height of a capital H, by its outline.
      double cap = font.getGlyph().getGlyph(cmap.getGlyphId('H')).getBoundingBox().getUpperRightY();
      assertEquals(Face.CAP_HEIGHT, cap / font.getUnitsPerEm(), 0.001);
    }
  }
}
