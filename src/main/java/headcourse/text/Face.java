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
  private volatile Parsed parsed;

  /** Advances in font units, plus one; 0: not looked up yet. */
  private final int[] advances = new int[0x3000];

  /** The character printed for another; 0: not looked up yet. */
  private final char[] shown = new char[advances.length];

  private record Parsed(TrueTypeFont font, CmapLookup map, int unitsPerEm) {
    int advance(int codePoint) {
      try {
        return font.getAdvanceWidth(map.getGlyphId(codePoint));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

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

  /** The font's PostScript name. */
  public String postScriptName() {
    return file.substring(0, file.length() - 4);
  }

  /** The font's file. */
  public InputStream open() {
    InputStream in = Face.class.getResourceAsStream("/headcourse/fonts/" + file);
    if (in == null) {
      throw new IllegalStateException("font missing from the program: " + file);
    }
    return in;
  }

  /** The font as the library reads it, parsed once; not to be closed. */
  public TrueTypeFont font() {
    return parsed().font;
  }

  private Parsed parsed() {
    Parsed p = parsed;
    if (p == null) {
      synchronized (this) {
        p = parsed;
        if (p == null) {
          p = parse();
          parsed = p;
        }
      }
    }
    return p;
  }

  private Parsed parse() {
    try (InputStream in = open()) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      // Or "fi" would become one code point in the text.
      font.setEnableGsub(false);
      return new Parsed(font, font.getUnicodeCmapLookup(), font.getUnitsPerEm());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether the face has a character. */
  public boolean has(int codePoint) {
    return parsed().map.getGlyphId(codePoint) != 0;
  }

  /** Em size in mm for a height of capitals in mm. */
  public static double em(double capHeight) {
    return capHeight / CAP_HEIGHT;
  }

  /** Width of a text in mm when its capitals are so many mm high. */
  public double width(String text, double capHeight) {
    return width(text.toCharArray(), 0, text.length(), capHeight);
  }

  /** Width of the part of a text from one place to before another; see above. */
  double width(char[] text, int from, int to, double capHeight) {
    long sum = 0;
    for (int i = from; i < to; i++) {
      char c = text[i];
      int known = c < advances.length ? advances[c] : 0;
      if (known == 0) {
        int whole = Character.codePointAt(text, i, to);
        i += Character.charCount(whole) - 1;
        known = lookUp(whole);
      }
      sum += known - 1;
    }
    return (double) sum / parsed().unitsPerEm * em(capHeight);
  }

  private int lookUp(int codePoint) {
    int known = SecondLanguage.marks(codePoint) ? 1 : parsed().advance(shown(codePoint)) + 1;
    if (codePoint < advances.length) {
      advances[codePoint] = known;
    }
    return known;
  }

  /**
   * The character that is printed for another: a space for one that controls, a question mark for
   * one that the face does not have.
   */
  public int shown(int codePoint) {
    if (codePoint >= shown.length) {
      return has(codePoint) ? codePoint : '?';
    }
    if (shown[codePoint] == 0) {
      boolean control = Character.isISOControl(codePoint);
      shown[codePoint] = control ? ' ' : has(codePoint) ? (char) codePoint : '?';
    }
    return shown[codePoint];
  }

  /** A text as it is printed: every character as {@link #shown(int)} has it. */
  public String shown(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.appendCodePoint(shown(c)));
    return out.toString();
  }
}
