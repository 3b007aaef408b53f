package headcourse.sheet.frame;

/** The heights of lettering, after ISO 3098, mm. */
final class Steps {
  private Steps() {}

  private static final double[] HEIGHTS = {2.5, 3.5, 5, 7, 10, 14, 20};

  /** The height itself, or that of the series where it is within 2 % of it. */
  static double near(double height) {
    for (double h : HEIGHTS) {
      if (Math.abs(height / h - 1) < 0.02) {
        return h;
      }
    }
    return height;
  }

  /** The next height below, or the same where there is none. */
  static double below(double height) {
    double best = height;
    for (double h : HEIGHTS) {
      if (h < height - 1e-9) {
        best = h;
      }
    }
    return best;
  }
}
