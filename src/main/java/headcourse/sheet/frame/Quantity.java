package headcourse.sheet.frame;

import java.util.ArrayList;
import java.util.List;

/** Reads a number of a frame file, in user units; refuses what no page is large enough for. */
final class Quantity {
  private static final double LARGEST = 10000;

  private Quantity() {}

  /** The value; complains and gives {@code otherwise} where it is none. */
  static double read(Node.Attribute a, Complaints complaints, double otherwise) {
    Double v = parse(a.value());
    if (v == null) {
      complaints.error(
          a.offset(), "not a number up to 10000: " + a.value(), "a plain number of millimetres");
      return otherwise;
    }
    return v;
  }

  /** The value of an attribute, or a default where it is missing. */
  static double of(Node node, String name, Complaints complaints, double otherwise) {
    Node.Attribute a = node.attributes().get(name);
    return a == null ? otherwise : read(a, complaints, otherwise);
  }

  /** The value, or null. A unit of mm or px is the user unit; no other is known. */
  static Double parse(String text) {
    String s = text.strip();
    if (s.endsWith("px") || s.endsWith("mm")) {
      s = s.substring(0, s.length() - 2);
    }
    if (s.isEmpty() || s.length() > 40) {
      return null;
    }
    for (int i = 0; i < s.length(); i++) {
      // Java would also take 1f, 0x1p3, NaN.
      if ("0123456789+-.eE".indexOf(s.charAt(i)) < 0) {
        return null;
      }
    }
    try {
      double v = Double.parseDouble(s);
      return Math.abs(v) <= LARGEST ? Double.valueOf(v) : null;
    } catch (NumberFormatException e) {
      return null;
    }
  }

  /** The parts of a list, at white space and commas. */
  static List<String> list(String text) {
    List<String> parts = new ArrayList<>();
    int from = -1;
    for (int i = 0; i <= text.length(); i++) {
      boolean gap = i == text.length() || text.charAt(i) <= ' ' || text.charAt(i) == ',';
      if (gap && from >= 0) {
        parts.add(text.substring(from, i));
        from = -1;
      } else if (!gap && from < 0) {
        from = i;
      }
    }
    return parts;
  }

  /** A text with its white space reduced to single spaces between words. */
  static String joined(CharSequence text) {
    StringBuilder s = new StringBuilder();
    boolean gap = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c <= ' ') {
        gap = s.length() > 0;
      } else {
        s.append(gap ? " " : "").append(c);
        gap = false;
      }
    }
    return s.toString();
  }
}
