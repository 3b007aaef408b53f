package headcourse.job;

import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.Map;
import java.util.Optional;

/**
 * The values of a shape's own keys.
 *
 * @param values by key: {@link Length}, {@link Angle}, {@link Double}, {@link Integer} or {@link
 *     String}
 */
public record Params(Map<String, Object> values) {
  /** None. */
  public static final Params NONE = new Params(Map.of());

  /** Copies the map. */
  public Params {
    values = Map.copyOf(values);
  }

  private <T> Optional<T> get(String key, Class<T> type) {
    Object v = values.get(key);
    return type.isInstance(v) ? Optional.of(type.cast(v)) : Optional.empty();
  }

  /** A length. */
  public Optional<Length> length(String key) {
    return get(key, Length.class);
  }

  /** An angle; a rate was turned into one. */
  public Optional<Angle> angle(String key) {
    return get(key, Angle.class);
  }

  /** A number. */
  public Optional<Double> number(String key) {
    return get(key, Double.class);
  }

  /** A whole number. */
  public Optional<Integer> count(String key) {
    return get(key, Integer.class);
  }

  /** A word. */
  public Optional<String> word(String key) {
    return get(key, String.class);
  }
}
