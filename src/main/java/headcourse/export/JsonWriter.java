package headcourse.export;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes JSON (RFC 8259) in the order it is told, indented by two, numbers with four decimals. */
final class JsonWriter {
  private final StringBuilder out = new StringBuilder();
  private int depth;
  private boolean first = true;
  private boolean afterKey;
  private boolean flat;

  JsonWriter object() {
    return open('{');
  }

  JsonWriter end() {
    return close('}');
  }

  JsonWriter array() {
    return open('[');
  }

  JsonWriter endArray() {
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

  JsonWriter key(String name) {
    separate();
    quote(name);
    out.append(": ");
    afterKey = true;
    return this;
  }

  JsonWriter value(String text) {
    separate();
    if (text == null) {
      out.append("null");
    } else {
      quote(text);
    }
    return this;
  }

  JsonWriter value(long number) {
    separate();
    out.append(number);
    return this;
  }

  JsonWriter value(boolean b) {
    separate();
    out.append(b);
    return this;
  }

  /** A number rounded to four decimals, without trailing zeros, never −0. */
  JsonWriter value(double number) {
    separate();
    out.append(decimal(number));
    return this;
  }

  JsonWriter nullable(Double number) {
    return number == null ? value((String) null) : value(number.doubleValue());
  }

  /** A point on one line. */
  JsonWriter pair(double x, double y) {
    separate();
    out.append('[').append(decimal(x)).append(", ").append(decimal(y)).append(']');
    return this;
  }

  static String decimal(double number) {
    double scaled = number * 10_000;
    double whole = Math.rint(scaled);
    if (Math.abs(scaled) < 1e12 && Math.abs(scaled - whole) < 0.499) {
      return decimal((long) whole);
    }
    // Huge, or so near the middle of two that the exact digits decide.
    BigDecimal d = new BigDecimal(number).setScale(4, RoundingMode.HALF_EVEN);
    if (d.signum() == 0) {
      return "0.0";
    }
    d = d.stripTrailingZeros();
    return (d.scale() < 1 ? d.setScale(1) : d).toPlainString();
  }

  private static String decimal(long tenThousandths) {
    long n = Math.abs(tenThousandths);
    StringBuilder s = new StringBuilder();
    s.append(tenThousandths < 0 ? "-" : "").append(n / 10_000).append('.');
    String rest = Long.toString(10_000 + n % 10_000);
    int end = rest.length();
    while (end > 2 && rest.charAt(end - 1) == '0') {
      end--;
    }
    return s.append(rest, 1, end).toString();
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
    out.append('\n').append("  ".repeat(depth));
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
