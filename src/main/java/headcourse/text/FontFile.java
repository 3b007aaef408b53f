package headcourse.text;

import java.util.Arrays;

/**
 * The parts of a TrueType file (ISO/IEC 14496-22) that lettering needs, read where they lie: which
 * glyph shows a character, how far it advances, what its outline is. Immutable.
 */
public final class FontFile {
  private final byte[] data;
  private final int unitsPerEm;
  private final boolean longOffsets;
  private final int glyphs;
  private final int metrics;
  private final int hmtx;
  private final int loca;
  private final int glyf;
  private final int cmap;

  /** Reads a file's directory. The bytes must not be changed afterwards. */
  FontFile(byte[] bytes) {
    data = bytes;
    int head = table("head");
    unitsPerEm = u16(head + 18);
    longOffsets = u16(head + 50) == 1;
    glyphs = u16(table("maxp") + 4);
    metrics = u16(table("hhea") + 34);
    hmtx = table("hmtx");
    loca = table("loca");
    glyf = table("glyf");
    cmap = segments(table("cmap"));
  }

  private int u16(int at) {
    return (data[at] & 0xFF) << 8 | data[at + 1] & 0xFF;
  }

  private int i32(int at) {
    return u16(at) << 16 | u16(at + 2);
  }

  private int table(String tag) {
    int wanted = tag.charAt(0) << 24 | tag.charAt(1) << 16 | tag.charAt(2) << 8 | tag.charAt(3);
    for (int i = 0, at = 12; i < u16(4); i++, at += 16) {
      if (i32(at) == wanted) {
        return i32(at + 8);
      }
    }
    throw new IllegalArgumentException("a font without table " + tag);
  }

  /** The map of characters by segments (format 4) for Unicode's basic plane. */
  private int segments(int table) {
    for (int i = 0, at = table + 4; i < u16(table + 2); i++, at += 8) {
      int map = table + i32(at + 4);
      if (u16(at) == 3 && u16(at + 2) == 1 && u16(map) == 4) {
        return map;
      }
    }
    throw new IllegalArgumentException("a font without a Unicode map");
  }

  /** The first bytes of a table, for copying. */
  public byte[] copy(String tag, int length) {
    int at = table(tag);
    return Arrays.copyOfRange(data, at, at + length);
  }

  /** Units that make an em. */
  public int unitsPerEm() {
    return unitsPerEm;
  }

  /** The glyph of a character; 0 where the font has none. */
  public int glyph(int codePoint) {
    if (codePoint > 0xFFFF) {
      return 0;
    }
    int twice = u16(cmap + 6);
    int ends = cmap + 14;
    int low = 0;
    int high = twice / 2 - 1;
    while (low < high) {
      int middle = (low + high) / 2;
      if (u16(ends + 2 * middle) < codePoint) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    int at = ends + 2 + twice + 2 * low;
    int start = u16(at);
    if (codePoint < start || codePoint > u16(ends + 2 * low)) {
      return 0;
    }
    int delta = u16(at + twice);
    int range = u16(at + 2 * twice);
    if (range == 0) {
      return codePoint + delta & 0xFFFF;
    }
    int glyph = u16(at + 2 * twice + range + 2 * (codePoint - start));
    return glyph == 0 ? 0 : glyph + delta & 0xFFFF;
  }

  /** How far a glyph advances, in units. */
  public int advance(int glyph) {
    return u16(hmtx + 4 * Math.min(glyph, metrics - 1));
  }

  /** How far a glyph's outline stands in from its origin, in units. */
  public int bearing(int glyph) {
    return (short)
        u16(glyph < metrics ? hmtx + 4 * glyph + 2 : hmtx + 4 * metrics + 2 * (glyph - metrics));
  }

  /** A glyph's outline as the file stores it; empty where it has none. */
  public byte[] outline(int glyph) {
    if (glyph >= glyphs) {
      return new byte[0];
    }
    int from = offset(glyph);
    return Arrays.copyOfRange(data, glyf + from, glyf + offset(glyph + 1));
  }

  private int offset(int glyph) {
    return longOffsets ? i32(loca + 4 * glyph) : 2 * u16(loca + 2 * glyph);
  }
}
