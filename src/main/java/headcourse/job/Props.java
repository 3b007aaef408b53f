package headcourse.job;

import headcourse.units.Length;

/**
 * What carries the stones over an opening while the mortar is green.
 *
 * @param thickness of the plank, which lies flat
 * @param width of the plank
 * @param stiffness modulus of elasticity of its wood, N/mm²
 * @param sag most that it may sag between two posts
 * @param push what the weight is multiplied by, because stones are pushed home
 * @param lagging boards that lie over the ribs of a centring
 */
public record Props(
    Length thickness, Length width, double stiffness, Length sag, double push, Length lagging) {
  /** N/mm² in lb/in². */
  public static final double LB_PER_IN2 = 0.45359237 * 9.80665 / (25.4 * 25.4);

  /**
   * Spruce, pine or fir of the lowest grade, No. 3, 1 200 000 lb/in² (NDS Supplement, from memory).
   */
  public static final double INCH_STIFFNESS = 1_200_000 * LB_PER_IN2;

  /** Softwood of class C16, N/mm² (EN 338, from memory). */
  public static final double METRIC_STIFFNESS = 8000;

  /** A plank of 2 by 6 on its flat. */
  public static final Props DEFAULT =
      new Props(
          Length.inches(1.5),
          Length.inches(5.5),
          INCH_STIFFNESS,
          Length.inches(1 / 32.0),
          2,
          Length.inches(0.75));
}
