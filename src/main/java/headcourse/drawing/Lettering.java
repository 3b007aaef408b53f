package headcourse.drawing;

/**
 * How text is written.
 *
 * @param height height of capitals in mm on paper, from the ISO 3098 series: 2.5, 3.5, 5, 7, 10,
 *     14, 20
 * @param bold whether bold
 */
public record Lettering(double height, boolean bold) {
  /** The least that may be printed. */
  public static final double LEAST = 2.5;

  /** Notes. */
  public static final Lettering NOTE = new Lettering(2.5, false);

  /** Body text. */
  public static final Lettering BODY = new Lettering(3.5, false);

  /** Dimensions. */
  public static final Lettering DIMENSION = new Lettering(3.5, true);

  /** Marks. */
  public static final Lettering MARK = new Lettering(7, true);

  /** The same height, bold. */
  public Lettering inBold() {
    return new Lettering(height, true);
  }
}
