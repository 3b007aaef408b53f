package headcourse.rules;

/**
 * Mortar by what it is for, m³.
 *
 * @param bed behind the faces
 * @param scratch scratch coat behind the bed
 * @param soffit over the returns
 * @param joints between the stones, and between the ends and the wall
 * @param waste over all of them
 */
public record Mortar(double bed, double scratch, double soffit, double joints, double waste) {
  /** What lies in the wall. */
  public double set() {
    return bed + scratch + soffit + joints;
  }

  /** What is mixed. */
  public double mixed() {
    return set() + waste;
  }
}
