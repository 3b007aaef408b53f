package headcourse.render.pdf;

import headcourse.text.Face;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A face as one document uses it: embedded once, and only the glyphs that were asked for. */
final class Lettered {
  private final Face face;
  private final PDType0Font font;
  private final Map<Integer, String> codes = new HashMap<>();

  Lettered(PDDocument document, Face face) throws IOException {
    this.face = face;
    this.font = PDType0Font.load(document, face.font(), true);
  }

  PDType0Font font() {
    return font;
  }

  /** The text as a hexadecimal string of glyph codes. */
  String encode(String text) throws IOException {
    StringBuilder s = new StringBuilder(text.length() * 4 + 2).append('<');
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      String code = codes.get(c);
      if (code == null) {
        code = code(c);
        codes.put(c, code);
      }
      s.append(code);
    }
    return s.append('>').toString();
  }

  private String code(int c) throws IOException {
    int shown = Character.isISOControl(c) ? ' ' : face.has(c) ? c : '?';
    font.addToSubset(shown);
    StringBuilder hex = new StringBuilder();
    for (byte b : font.encode(Character.toString(shown))) {
      hex.append(Character.forDigit(b >> 4 & 15, 16)).append(Character.forDigit(b & 15, 16));
    }
    return hex.toString();
  }
}
