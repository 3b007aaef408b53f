package headcourse.text;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A file in the making as octets: ASCII, UTF-8, and numbers with at most four decimals, no exponent
 * and no minus zero. An array is filled, since a short run has no time to warm anything dearer.
 */
public final class Utf8Buffer {
  /** A number's longest: a sign, nineteen digits, a point and what follows it. */
  private static final int LONGEST = 28;

  private byte[] bytes;
  private int size;
  private final int fine;

  /**
   * None yet.
   *
   * @param room how many there is room for at first, positive
   */
  public Utf8Buffer(int room) {
    this(room, false);
  }

  /**
   * None yet.
   *
   * @param room how many there is room for at first, positive
   * @param coarse whether numbers have at most two decimals
   */
  public Utf8Buffer(int room, boolean coarse) {
    bytes = new byte[room];
    fine = coarse ? 100 : 10000;
  }

  private void room(int more) {
    if (bytes.length - size < more) {
      bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, size + more));
    }
  }

  /** Adds one character of ASCII. */
  public Utf8Buffer put(char c) {
    if (size == bytes.length) {
      room(1);
    }
    bytes[size++] = (byte) c;
    return this;
  }

  /** Adds octets. */
  public Utf8Buffer put(byte[] more) {
    return put(more, more.length);
  }

  /** Adds text in UTF-8. */
  public Utf8Buffer put(String text) {
    byte[] more = text.getBytes(StandardCharsets.UTF_8);
    return put(more, more.length);
  }

  private Utf8Buffer put(byte[] more, int length) {
    room(length);
    System.arraycopy(more, 0, bytes, size, length);
    size += length;
    return this;
  }

  /** Adds a number, rounded to its decimals, halves up, and without noughts at its end. */
  public Utf8Buffer number(double value) {
    // Rounded here: the library's own takes several calls, and these are many.
    double scaled = value * fine;
    long n = (long) scaled;
    double left = scaled - n;
    if (left >= 0.5) {
      n++;
    } else if (left < -0.5) {
      n--;
    }
    room(LONGEST);
    if (n < 0) {
      bytes[size++] = '-';
      n = -n;
    }
    whole(n / fine);
    int rest = (int) (n % fine);
    if (rest != 0) {
      bytes[size++] = '.';
      for (int unit = fine / 10; rest != 0; unit /= 10) {
        bytes[size++] = (byte) ('0' + rest / unit);
        rest %= unit;
      }
    }
    return this;
  }

  /** Adds a number; not negative. */
  public Utf8Buffer whole(long n) {
    int digits = 1;
    for (long rest = n; rest >= 10; rest /= 10) {
      digits++;
    }
    return padded(n, digits);
  }

  /** Adds the last so many digits of a number, noughts before it; not negative. */
  public Utf8Buffer padded(long n, int digits) {
    room(digits);
    long rest = n;
    for (int i = size + digits - 1; i >= size; i--) {
      bytes[i] = (byte) ('0' + rest % 10);
      rest /= 10;
    }
    size += digits;
    return this;
  }

  /** Adds the last so many hexadecimal digits of a number, at most eight. */
  public Utf8Buffer hex(int n, int digits) {
    room(digits);
    for (int shift = 4 * digits - 4; shift >= 0; shift -= 4) {
      int digit = n >> shift & 15;
      bytes[size++] = (byte) (digit < 10 ? '0' + digit : 'a' - 10 + digit);
    }
    return this;
  }

  /** A copy of them. */
  public byte[] toBytes() {
    return Arrays.copyOf(bytes, size);
  }

  /** They as UTF-8. */
  @Override
  public String toString() {
    return new String(bytes, 0, size, StandardCharsets.UTF_8);
  }
}
