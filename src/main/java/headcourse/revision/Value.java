package headcourse.revision;

import java.util.List;

/**
 * A value of a {@link Property}: a word, or numbers in the property's unit.
 *
 * @param text the word; empty where there are numbers
 * @param numbers numbers; none where the piece has nothing of the kind
 */
public record Value(String text, List<Double> numbers) {
  /** Nothing. */
  static final Value NONE = new Value("", List.of());

  /**
   * Lengths that differ by less are the same, mm: half the finest step that sheets print, and far
   * more than the file's four decimals lose.
   */
  private static final double LENGTH = 0.05;

  /** Angles that differ by less are the same, degrees; a tenth is printed. */
  private static final double ANGLE = 0.05;

  /** Copies the numbers. */
  public Value {
    numbers = List.copyOf(numbers);
  }

  static Value of(double number) {
    return new Value("", List.of(number));
  }

  static Value of(String text) {
    return new Value(text, List.of());
  }

  boolean same(Value other, Property.Kind kind) {
    if (!text.equals(other.text) || numbers.size() != other.numbers.size()) {
      return false;
    }
    double slack = kind == Property.Kind.ANGLE ? ANGLE : LENGTH;
    for (int i = 0; i < numbers.size(); i++) {
      if (Math.abs(numbers.get(i) - other.numbers.get(i)) >= slack) {
        return false;
      }
    }
    return true;
  }
}
