package headcourse.export;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes JSON (RFC 8259) in the order it is told, indented by two, numbers with four decimals. */
public final class JsonWriter {
  private final StringBuilder out = new StringBuilder();
  private int depth;
  private boolean first = true;
  private boolean afterKey;
  private boolean flat;

  public JsonWriter object() {
    return open('{');
  }

  public JsonWriter end() {
    return close('}');
  }

  public JsonWriter array() {
    return open('[');
  }

  public JsonWriter endArray() {
    return close(']');
  }

  /** An array whose elements stay on one line. */
  JsonWriter flatArray() {
    open('[');
    flat = true;
    return this;
  }

  JsonWriter endFlat() {
    flat = false;
    depth--;
    out.append(']');
    first = false;
    return this;
  }

  /** A key; they are all the program's own words, so that nothing is to be escaped. */
  public JsonWriter key(String name) {
    separate();
    out.append('"').append(name).append("\": ");
    afterKey = true;
    return this;
  }

  public JsonWriter value(String text) {
    separate();
    if (text == null) {
      out.append("null");
    } else {
      quote(text);
    }
    return this;
  }

  public JsonWriter value(long number) {
    separate();
    out.append(number);
    return this;
  }

  public JsonWriter value(boolean b) {
    separate();
    out.append(b);
    return this;
  }

  /** A number rounded to four decimals, without trailing zeros, never −0. */
  public JsonWriter value(double number) {
    separate();
    decimal(out, number);
    return this;
  }

  /** A number with the decimals that it has, without trailing zeros. */
  public JsonWriter value(BigDecimal number) {
    separate();
    decimal(out, number);
    return this;
  }

  /** A point on one line. */
  JsonWriter pair(BigDecimal x, BigDecimal y) {
    separate();
    out.append('[');
    decimal(out, x);
    out.append(", ");
    decimal(out, y);
    out.append(']');
    return this;
  }

  static String decimal(double number) {
    StringBuilder s = new StringBuilder();
    decimal(s, number);
    return s.toString();
  }

  private static void decimal(StringBuilder s, double number) {
    double scaled = number * 10_000;
    double whole = Math.rint(scaled);
    if (Math.abs(scaled) < 1e12 && Math.abs(scaled - whole) < 0.499) {
      decimal(s, (long) whole);
      return;
    }
    // Huge, or so near the middle of two that the exact digits decide.
    decimal(s, new BigDecimal(number).setScale(4, RoundingMode.HALF_EVEN));
  }

  private static void decimal(StringBuilder s, BigDecimal number) {
    if (number.signum() == 0) {
      s.append("0.0");
      return;
    }
    BigDecimal d = number.stripTrailingZeros();
    s.append((d.scale() < 1 ? d.setScale(1) : d).toPlainString());
  }

  private static void decimal(StringBuilder s, long tenThousandths) {
    if (tenThousandths < 0) {
      s.append('-');
    }
    long n = Math.abs(tenThousandths);
    s.append(n / 10_000).append('.');
    int rest = (int) (n % 10_000);
    int unit = 1000;
    do {
      s.append((char) ('0' + rest / unit));
      rest %= unit;
      unit /= 10;
    } while (rest != 0);
  }

  @Override
  public String toString() {
    return out + "\n";
  }

  private JsonWriter open(char c) {
    separate();
    out.append(c);
    depth++;
    first = true;
    return this;
  }

  private JsonWriter close(char c) {
    depth--;
    if (!first) {
      line();
    }
    out.append(c);
    first = false;
    return this;
  }

  private void separate() {
    if (afterKey) {
      afterKey = false;
      return;
    }
    if (depth == 0) {
      return;
    }
    if (!first) {
      out.append(flat ? ", " : ",");
    }
    if (!flat) {
      line();
    }
    first = false;
  }

  private void line() {
    out.append('\n');
    for (int i = 0; i < depth; i++) {
      out.append("  ");
    }
  }

  private void quote(String s) {
    out.append('"');
    for (int i = 0; i < s.length(); i++) {
      char c = s.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (c < 0x20 || Character.isSurrogate(c) && !paired(s, i)) {
            out.append("\\u");
            String hex = Integer.toHexString(c);
            out.append("0".repeat(4 - hex.length())).append(hex);
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }

  private static boolean paired(String s, int i) {
    char c = s.charAt(i);
    return Character.isHighSurrogate(c)
        ? i + 1 < s.length() && Character.isLowSurrogate(s.charAt(i + 1))
        : i > 0 && Character.isHighSurrogate(s.charAt(i - 1));
  }
}
