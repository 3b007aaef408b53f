package headcourse.drawing;

/**
 * A line: width from the ISO 128 series, and a pattern. Always black.
 *
 * @param width mm on paper: 0.18, 0.25, 0.35, 0.5, 0.7
 * @param pattern how it is broken
 */
public record Pen(double width, Pattern pattern) {
  /** Cut outlines of the key and of what is cut. */
  public static final Pen OUTLINE = new Pen(0.7, Pattern.SOLID);

  /** Cut outlines where many lie close. */
  public static final Pen CUT = new Pen(0.5, Pattern.SOLID);

  /** Other edges, table rules. */
  public static final Pen EDGE = new Pen(0.35, Pattern.SOLID);

  /** Dimension lines. */
  public static final Pen DIMENSION = new Pen(0.25, Pattern.SOLID);

  /** Extension lines and leaders. */
  public static final Pen FINE = new Pen(0.18, Pattern.SOLID);

  /** Hidden edges. */
  public static final Pen HIDDEN = new Pen(0.35, Pattern.DASHED);

  /** Centre lines. */
  public static final Pen CENTRE = new Pen(0.25, Pattern.CHAIN);

  /** How a line is broken. */
  public enum Pattern {
    /** Whole. */
    SOLID(),
    /** Dashes. */
    DASHED(3, 1.5),
    /** Long dash, dot. */
    CHAIN(8, 1.5, 1.5, 1.5);

    private final double[] dashes;

    Pattern(double... dashes) {
      this.dashes = dashes;
    }

    /** Lengths of dashes and gaps in mm on paper; empty for a whole line. */
    public double[] dashes() {
      return dashes.clone();
    }
  }
}
