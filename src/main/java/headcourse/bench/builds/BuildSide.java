package headcourse.bench.builds;

import java.util.List;

/**
 * One side of a head as it is built: places along the soffit from the centre line outwards, mm.
 *
 * @param keyEdge where the key's edge stands; 0 without a key
 * @param stones from the centre outwards
 * @param checks where it is measured and corrected on the way
 * @param jamb where the jamb line stands
 * @param least the least that the end may pass the jamb line by; where it closes, by how much it
 *     may fall short of the skewback, as a negative number
 * @param most the most that it may pass it by; infinite where nothing bounds it
 * @param closes whether the end closes on a skewback, which the last stone is trimmed to
 */
public record BuildSide(
    double keyEdge,
    List<Stone> stones,
    List<Check> checks,
    double jamb,
    double least,
    double most,
    boolean closes) {
  /** What is known of a stone that was measured: it brings no error along. */
  public static final int KNOWN = -1;

  /** Copies the lists. */
  public BuildSide {
    stones = List.copyOf(stones);
    checks = List.copyOf(checks);
  }

  /**
   * A stone.
   *
   * @param inner where its edge towards the centre stands
   * @param outer where its other edge stands
   * @param setting number of the saw setting it is cut at, or {@link #KNOWN}
   */
  public record Stone(double inner, double outer, int setting) {}

  /**
   * A place where the edge last set is measured from the centre line and put right from there on.
   *
   * @param after number of the stone whose outer edge is measured; 0 for the key
   * @param trims number of the stone that is trimmed where the edge stands too far out; 0 for none
   * @param opens over how many joints from here it is made up where it falls short
   */
  public record Check(int after, int trims, int opens) {}
}
