package headcourse.bench.builds;

/**
 * How a number of builds went.
 *
 * @param builds how many
 * @param checked how many landed, measured and corrected on the way
 * @param unchecked how many landed without that
 * @param joint checked builds with a joint too near a jamb line
 * @param inside checked builds with an end that fell short
 * @param outside checked builds with an end that went too far
 */
public record Tally(int builds, int checked, int unchecked, Miss joint, Miss inside, Miss outside) {
  /**
   * A way not to land.
   *
   * @param builds in how many
   * @param relief by how much the limit would have to give, mm, for no more than one build in a
   *     hundred to break it
   */
  public record Miss(int builds, double relief) {}
}
