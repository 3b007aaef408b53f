package headcourse.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The two faces that sheets are lettered in, and their metrics; parsed once, safe over threads. No
 * kerning: the width of a text is the sum of its advances, in every renderer.
 */
public enum Face {
  /** DejaVu Sans Condensed. */
  REGULAR("DejaVuSansCondensed.ttf"),
  /** DejaVu Sans Condensed, bold. */
  BOLD("DejaVuSansCondensed-Bold.ttf");

  /** Height of capitals over the em; the font's own table leaves it empty. */
  public static final double CAP_HEIGHT = 0.729;

  /** How far letters reach below the base line, over the em: g, p, and the slash of fractions. */
  public static final double DESCENT = 0.236;

  /** How far the tallest letters that we print reach above the base line, over the em. */
  public static final double ASCENT = 0.78;

  private final String file;
  private TrueTypeFont font;
  private CmapLookup cmap;
  private final double[] advances = new double[0x3000];

  Face(String file) {
    this.file = file;
  }

  /** The name that SVG asks for. */
  public static String family() {
    return "DejaVu Sans Condensed";
  }

  /** The face for a weight. */
  public static Face of(boolean bold) {
    return bold ? BOLD : REGULAR;
  }

  /** The parsed font; the caller does not close it. */
  public synchronized TrueTypeFont font() {
    if (font == null) {
      try (InputStream in = Face.class.getResourceAsStream("/headcourse/fonts/" + file)) {
        if (in == null) {
          throw new IllegalStateException("font missing from the program: " + file);
        }
        font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
        font.setEnableGsub(false);
        cmap = font.getUnicodeCmapLookup();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return font;
  }

  /** Whether the face has a character. */
  public synchronized boolean has(int codePoint) {
    font();
    return cmap.getGlyphId(codePoint) != 0;
  }

  /** Em size in mm for a height of capitals in mm. */
  public static double em(double capHeight) {
    return capHeight / CAP_HEIGHT;
  }

  /** Width of a text in mm when its capitals are so many mm high. */
  public double width(String text, double capHeight) {
    double sum = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      sum += advance(c);
    }
    return sum * em(capHeight);
  }

  private synchronized double advance(int c) {
    if (c < advances.length && advances[c] != 0) {
      return advances[c];
    }
    try {
      TrueTypeFont f = font();
      double a = (double) f.getAdvanceWidth(cmap.getGlyphId(c)) / f.getUnitsPerEm();
      if (c < advances.length) {
        advances[c] = a;
      }
      return a;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
