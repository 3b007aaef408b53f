package headcourse.sheet.frame;

import java.util.Locale;
import java.util.OptionalInt;

/** Reads SVG colours: hexadecimal, {@code rgb()}, and the sixteen names of HTML with a few more. */
final class Colours {
  private Colours() {}

  private static final String[] NAMES = {
    "black", "white", "red", "lime", "blue", "yellow", "aqua", "cyan", "fuchsia", "magenta",
    "silver", "gray", "grey", "maroon", "green", "olive", "teal", "navy", "purple", "orange",
    "brown", "darkgray", "darkgrey", "lightgray", "lightgrey", "dimgray", "dimgrey"
  };

  private static final int[] VALUES = {
    0x000000, 0xFFFFFF, 0xFF0000, 0x00FF00, 0x0000FF, 0xFFFF00, 0x00FFFF, 0x00FFFF, 0xFF00FF,
    0xFF00FF, 0xC0C0C0, 0x808080, 0x808080, 0x800000, 0x008000, 0x808000, 0x008080, 0x000080,
    0x800080, 0xFFA500, 0xA52A2A, 0xA9A9A9, 0xA9A9A9, 0xD3D3D3, 0xD3D3D3, 0x696969, 0x696969
  };

  /** The colour as 0xRRGGBB, or nothing where the text is no colour that we know. */
  static OptionalInt read(String text) {
    String s = text.strip().toLowerCase(Locale.ROOT);
    try {
      if (s.startsWith("#") && s.length() == 7) {
        return OptionalInt.of(Integer.parseUnsignedInt(s.substring(1), 16));
      }
      if (s.startsWith("#") && s.length() == 4) {
        int n = Integer.parseUnsignedInt(s.substring(1), 16);
        return OptionalInt.of((n >> 8) * 0x110000 + (n >> 4 & 15) * 0x1100 + (n & 15) * 0x11);
      }
      if (s.startsWith("rgb(") && s.endsWith(")")) {
        return components(s.substring(4, s.length() - 1));
      }
    } catch (NumberFormatException e) {
      return OptionalInt.empty();
    }
    for (int i = 0; i < NAMES.length; i++) {
      if (NAMES[i].equals(s)) {
        return OptionalInt.of(VALUES[i]);
      }
    }
    return OptionalInt.empty();
  }

  private static OptionalInt components(String list) {
    int rgb = 0;
    String[] parts = list.split(",", -1);
    if (parts.length != 3) {
      return OptionalInt.empty();
    }
    for (String part : parts) {
      String p = part.strip();
      double v =
          p.endsWith("%")
              ? Double.parseDouble(p.substring(0, p.length() - 1)) * 2.55
              : Double.parseDouble(p);
      rgb = rgb << 8 | (int) Math.round(Math.max(0, Math.min(255, v)));
    }
    return OptionalInt.of(rgb);
  }
}
