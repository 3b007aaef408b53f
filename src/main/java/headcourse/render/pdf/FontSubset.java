package headcourse.render.pdf;

import headcourse.text.FontFile;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Those glyphs of a font that a document uses, numbered in the order of their first use, and the
 * small TrueType file that holds them (ISO 32000-1, 9.9: no table beyond these is needed). The
 * hints are left out: paper has pixels enough.
 */
final class FontSubset {
  private static final int ARE_WORDS = 1;
  private static final int HAS_SCALE = 8;
  private static final int MORE = 0x20;
  private static final int HAS_TWO_SCALES = 0x40;
  private static final int HAS_MATRIX = 0x80;
  private static final int HAS_HINTS = 0x100;

  private final FontFile file;
  private final List<Integer> glyphs = new ArrayList<>();
  private final Map<Integer, Integer> numbers = new HashMap<>();

  FontSubset(FontFile file) {
    this.file = file;
    // The glyph for what is missing comes first in every font.
    number(0);
  }

  /** The number here of a glyph of the whole font. */
  int number(int glyph) {
    Integer n = numbers.get(glyph);
    if (n == null) {
      n = glyphs.size();
      glyphs.add(glyph);
      numbers.put(glyph, n);
    }
    return n;
  }

  /** The glyphs of the whole font, in the order of their numbers here. */
  List<Integer> glyphs() {
    return glyphs;
  }

  /** The file; glyphs that others are composed of are added at the end. */
  byte[] trueType() {
    ByteArrayOutputStream outlines = new ByteArrayOutputStream();
    List<Integer> offsets = new ArrayList<>();
    for (int i = 0; i < glyphs.size(); i++) {
      offsets.add(outlines.size());
      outlines.writeBytes(outline(file.outline(glyphs.get(i))));
      while (outlines.size() % 4 != 0) {
        outlines.write(0);
      }
    }
    offsets.add(outlines.size());
    int n = glyphs.size();
    ByteBuffer loca = ByteBuffer.allocate(4 * (n + 1));
    offsets.forEach(loca::putInt);
    ByteBuffer hmtx = ByteBuffer.allocate(4 * n);
    for (int g : glyphs) {
      hmtx.putShort((short) file.advance(g)).putShort((short) file.bearing(g));
    }
    ByteBuffer head = ByteBuffer.wrap(file.copy("head", 54));
    head.putInt(8, 0).putShort(50, (short) 1);
    ByteBuffer hhea = ByteBuffer.wrap(file.copy("hhea", 36));
    hhea.putShort(34, (short) n);
    ByteBuffer maxp = ByteBuffer.wrap(file.copy("maxp", 32));
    maxp.putShort(4, (short) n);
    String[] tags = {"glyf", "head", "hhea", "hmtx", "loca", "maxp"};
    byte[][] tables = {
      outlines.toByteArray(), head.array(), hhea.array(), hmtx.array(), loca.array(), maxp.array()
    };
    return assembled(tags, tables);
  }

  private static byte[] assembled(String[] tags, byte[][] tables) {
    int size = 12 + 16 * tags.length;
    for (byte[] t : tables) {
      size += (t.length + 3) / 4 * 4;
    }
    ByteBuffer out = ByteBuffer.allocate(size);
    // Six tables: the largest power of two among them is four.
    out.putInt(0x00010000).putShort((short) tags.length);
    out.putShort((short) 64).putShort((short) 2).putShort((short) (16 * tags.length - 64));
    int at = 12 + 16 * tags.length;
    int headAt = 0;
    int all = 0;
    for (int i = 0; i < tags.length; i++) {
      for (char c : tags[i].toCharArray()) {
        out.put((byte) c);
      }
      int sum = sum(tables[i]);
      all += sum;
      out.putInt(sum).putInt(at).putInt(tables[i].length);
      headAt = tags[i].equals("head") ? at : headAt;
      at += (tables[i].length + 3) / 4 * 4;
    }
    all += sum(Arrays.copyOf(out.array(), out.position()));
    for (byte[] t : tables) {
      out.put(t).position((out.position() + 3) / 4 * 4);
    }
    out.putInt(headAt + 8, 0xB1B0AFBA - all);
    return out.array();
  }

  /** The sum of a table's words of four octets, noughts after its end. */
  private static int sum(byte[] table) {
    int sum = 0;
    int shift = 24;
    for (byte b : table) {
      sum += (b & 0xFF) << shift;
      shift = shift - 8 & 24;
    }
    return sum;
  }

  /** The outline without its hints, the glyphs that it refers to by their numbers here. */
  private byte[] outline(byte[] data) {
    if (data.length == 0) {
      return data;
    }
    ByteBuffer b = ByteBuffer.wrap(data);
    int contours = b.getShort(0);
    if (contours >= 0) {
      int hints = 10 + 2 * contours;
      int rest = hints + 2 + (b.getShort(hints) & 0xFFFF);
      ByteBuffer out = ByteBuffer.allocate(hints + 2 + data.length - rest);
      out.put(data, 0, hints).putShort((short) 0).put(data, rest, data.length - rest);
      return out.array();
    }
    int at = 10;
    int flags = MORE;
    while ((flags & MORE) != 0) {
      flags = b.getShort(at) & ~HAS_HINTS;
      b.putShort(at, (short) flags);
      b.putShort(at + 2, (short) number(b.getShort(at + 2) & 0xFFFF));
      at += 4 + ((flags & ARE_WORDS) != 0 ? 4 : 2);
      at += (flags & HAS_SCALE) != 0 ? 2 : 0;
      at += (flags & HAS_TWO_SCALES) != 0 ? 4 : 0;
      at += (flags & HAS_MATRIX) != 0 ? 8 : 0;
    }
    return Arrays.copyOf(data, at);
  }
}
