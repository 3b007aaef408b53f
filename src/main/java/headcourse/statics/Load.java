package headcourse.statics;

/**
 * What weighs on the blocks between two joints.
 *
 * @param weight mm² of face
 * @param x where its line of action lies, mm
 */
public record Load(double weight, double x) {
  /** Nothing. */
  public static final Load NONE = new Load(0, 0);

  /** Both together. */
  public Load plus(Load other) {
    double sum = weight + other.weight;
    return sum == 0 ? NONE : new Load(sum, (weight * x + other.weight * other.x) / sum);
  }

  Load mirrored() {
    return new Load(weight, 0 - x);
  }
}
