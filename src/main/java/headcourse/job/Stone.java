package headcourse.job;

import headcourse.units.Length;

/**
 * The stone of the job.
 *
 * @param name what it is called; may be empty
 * @param kind the kind it was given by, or empty where only a density is given
 * @param density kg/m³ for masses
 * @param liftingDensity kg/m³ for lifting and weight limits: the heaviest plausible where only a
 *     kind is given, else the same
 * @param friction coefficient of friction of its joints, for reading a head as if it were solid
 * @param thickness how thick the veneer is
 * @param edges how exposed cut edges are dressed
 */
public record Stone(
    String name,
    String kind,
    double density,
    double liftingDensity,
    double friction,
    Length thickness,
    Edges edges) {
  /** How exposed cut edges are left. */
  public enum Edges {
    /** As the saw leaves them. */
    SAWN,
    /** Dressed to look split. */
    SPLIT
  }
}
