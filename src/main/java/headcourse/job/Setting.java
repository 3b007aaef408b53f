package headcourse.job;

import headcourse.units.Length;

/**
 * How the stones are set.
 *
 * @param joints dry or in mortar
 * @param joint width of a joint; zero for dry heads
 * @param opens what a dry joint opens by in practice
 * @param cutTolerance how far a sawn width may be off, either way
 * @param care how carefully it is done, for builds tried in numbers
 */
public record Setting(Joints joints, Length joint, Length opens, Length cutTolerance, Care care) {
  /** What is in the joints. */
  public enum Joints {
    /** Nothing. */
    DRY,
    /** Mortar. */
    MORTAR
  }

  /** Whether the joints are dry. */
  public boolean dry() {
    return joints == Joints.DRY;
  }
}
