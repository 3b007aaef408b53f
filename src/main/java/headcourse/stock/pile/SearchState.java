package headcourse.stock.pile;

import java.util.Arrays;

/** A place in a search by the numbers that decide what lies ahead of it. */
public record SearchState(long[] numbers) {
  @Override
  public boolean equals(Object o) {
    return o instanceof SearchState s && Arrays.equals(numbers, s.numbers);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(numbers);
  }
}
