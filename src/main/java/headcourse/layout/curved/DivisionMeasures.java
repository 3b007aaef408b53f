package headcourse.layout.curved;

import java.util.Arrays;

/**
 * What one number of stones gives.
 *
 * @param division the joints
 * @param least narrowest stone along the soffit's chord, mm; not positive where joints overlap
 * @param most widest
 * @param mean mean of one side, key left out
 */
record DivisionMeasures(Division division, double least, double most, double mean) {
  /**
   * Measures a division.
   *
   * @param keyIsOne whether the key is one of the row and keeps to its limits
   */
  static DivisionMeasures of(Division d, boolean keyIsOne) {
    double[] c = d.chords();
    double key = keyIsOne ? d.keyChord() : c[0];
    return new DivisionMeasures(
        d,
        Math.min(key, Arrays.stream(c).min().orElse(key)),
        Math.max(key, Arrays.stream(c).max().orElse(key)),
        Arrays.stream(c).average().orElse(key));
  }
}
