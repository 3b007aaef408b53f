package headcourse.rules;

import headcourse.units.Angle;
import headcourse.units.Length;

/**
 * The weight that one person may lift, by the revised NIOSH lifting equation: 51 lb × (10/H) × (1 −
 * 0.0075·|V − 30|) × (0.82 + 1.8/D) × (1 − 0.0032·A) × F × C, lengths in inches and A in degrees
 * (NIOSH publication 94-110). H below 10 in counts as 10 in, D below 10 in as 10 in; outside H ≤ 25
 * in, V ≤ 70 in, D ≤ 70 in, A ≤ 135° the equation allows nothing.
 *
 * @param horizontal H, hands to the ankles
 * @param vertical V, hands above the floor at the start
 * @param travel D, how far the hands go up
 * @param twist A, how far the body turns
 * @param frequency F, 1 for a lift now and then
 * @param coupling C, 1 for a good grip, 0.9 for a poor one
 */
public record NioshLift(
    Length horizontal,
    Length vertical,
    Length travel,
    Angle twist,
    double frequency,
    double coupling) {
  private static final double CONSTANT_LB = 51;

  /** The limit in pounds, 0 … 51. */
  public double limitLb() {
    double h = Math.max(10, horizontal.inches());
    double v = vertical.inches();
    double d = Math.max(10, Math.abs(travel.inches()));
    double a = Math.abs(twist.degrees());
    if (h > 25 || v < 0 || v > 70 || d > 70 || a > 135) {
      return 0;
    }
    return CONSTANT_LB
        * (10 / h)
        * (1 - 0.0075 * Math.abs(v - 30))
        * (0.82 + 1.8 / d)
        * (1 - 0.0032 * a)
        * frequency
        * coupling;
  }

  /** The limit in kilograms. */
  public double limitKg() {
    return limitLb() * Figures.KG_PER_LB;
  }
}
