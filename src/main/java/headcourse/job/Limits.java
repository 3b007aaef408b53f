package headcourse.job;

import java.util.Map;

/**
 * Thresholds that the job sets for rules, and which edition of the code they follow.
 *
 * @param edition TMS 402 edition, 2016 or 2022
 * @param values by rule name: {@link headcourse.units.Length}, {@link headcourse.units.Angle} or
 *     {@link Double} (masses in kg, mass per area in kg/m², areas in m², plain numbers)
 */
public record Limits(int edition, Map<String, Object> values) {
  /** What the rules say by themselves. */
  public static final Limits DEFAULT = new Limits(2016, Map.of());

  /** Copies the map. */
  public Limits {
    values = Map.copyOf(values);
  }
}
