package headcourse.layout.side;

/**
 * What {@code mixed} asks of neighbours, and what their sums can be.
 *
 * @param min least width
 * @param max greatest width
 * @param step least difference
 * @param jump greatest difference
 */
record Neighbours(long min, long max, long step, long jump) {
  static Neighbours of(FlatTerms terms) {
    return new Neighbours(
        terms.widths().min(), terms.widths().max(), terms.widths().step(), terms.widths().jump());
  }

  /** Whether a width may follow another that has stood {@code run} times running. */
  boolean follow(long previous, int run, long width) {
    long d = Math.abs(width - previous);
    return d >= step && d <= jump && (d > 0 || run < 2);
  }

  /** No {@code count} stones sum to less. */
  long least(long count) {
    long pair = Math.max(2 * min + step, 2 * min);
    return count / 2 * pair + count % 2 * min;
  }

  /** No {@code count} stones sum to more. */
  long most(long count) {
    return count / 2 * (2 * max - step) + count % 2 * max;
  }
}
