package headcourse.sheet.frame;

/** Tells ISO paper from others by its size. */
final class Sizes {
  private Sizes() {}

  /** Short sides of A0 … A4 and A5, ISO 216; each is the long side of the next. */
  private static final double[] SIDES = {1189, 841, 594, 420, 297, 210, 148};

  /** Whether a page is of the A series, upright or lying. Sizes in mm. */
  static boolean iso(double width, double height) {
    double longSide = Math.max(width, height);
    double shortSide = Math.min(width, height);
    for (int i = 0; i + 1 < SIDES.length; i++) {
      if (Math.abs(longSide - SIDES[i]) < 1 && Math.abs(shortSide - SIDES[i + 1]) < 1) {
        return true;
      }
    }
    return false;
  }
}
