package headcourse.render.svg;

/** Numbers as SVG writes them: at most four decimals, no exponent, no minus zero. */
final class Numbers {
  private Numbers() {}

  static String of(double value) {
    long n = Math.round(value * 10000);
    StringBuilder s = new StringBuilder();
    if (n < 0) {
      s.append('-');
      n = -n;
    }
    s.append(n / 10000);
    long rest = n % 10000;
    if (rest != 0) {
      s.append('.');
      for (long unit = 1000; rest != 0; unit /= 10) {
        s.append((char) ('0' + rest / unit));
        rest %= unit;
      }
    }
    return s.toString();
  }
}
