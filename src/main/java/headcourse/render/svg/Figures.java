package headcourse.render.svg;

import headcourse.geom.Point;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Text in the making as octets of UTF-8, with numbers as SVG writes them: at most four decimals, no
 * exponent, no minus zero. An array is filled, since a short run has no time to warm anything
 * dearer.
 */
final class Figures {
  private byte[] bytes = new byte[128];
  private int size;

  /** A number by itself. */
  static String of(double value) {
    return new Figures().number(value).toString();
  }

  /** Adds one character of ASCII. */
  Figures put(char c) {
    if (size == bytes.length) {
      bytes = Arrays.copyOf(bytes, size * 2);
    }
    bytes[size++] = (byte) c;
    return this;
  }

  Figures put(String s) {
    byte[] more = s.getBytes(StandardCharsets.UTF_8);
    return put(more, more.length);
  }

  Figures put(Figures other) {
    return put(other.bytes, other.size);
  }

  private Figures put(byte[] more, int length) {
    if (size + length > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, size + length));
    }
    System.arraycopy(more, 0, bytes, size, length);
    size += length;
    return this;
  }

  byte[] toBytes() {
    return Arrays.copyOf(bytes, size);
  }

  Figures number(double value) {
    long n = Math.round(value * 10000);
    if (n < 0) {
      put('-');
      n = -n;
    }
    digits(n / 10000);
    int rest = (int) (n % 10000);
    if (rest != 0) {
      put('.');
      for (int unit = 1000; rest != 0; unit /= 10) {
        put((char) ('0' + rest / unit));
        rest %= unit;
      }
    }
    return this;
  }

  private void digits(long n) {
    if (n >= 10) {
      digits(n / 10);
    }
    put((char) ('0' + n % 10));
  }

  Figures point(Point p) {
    return number(p.x()).put(' ').number(p.y());
  }

  @Override
  public String toString() {
    return new String(bytes, 0, size, StandardCharsets.UTF_8);
  }
}
