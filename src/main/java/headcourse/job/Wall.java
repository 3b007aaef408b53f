package headcourse.job;

import headcourse.units.Length;
import java.util.List;

/**
 * What is behind the stone, from the stone inwards.
 *
 * @param bed setting bed
 * @param scratch scratch coat with its lath
 * @param sheathing sheathing
 * @param framing framing, or masonry, that carries the wall
 * @param jambs what the stone does at the jambs
 * @param courses heights of the wall's bed joints above the soffit line's datum, lowest first;
 *     empty where not given
 */
public record Wall(
    Length bed,
    Length scratch,
    Length sheathing,
    Length framing,
    Jambs jambs,
    List<Length> courses) {
  /** Copies the courses. */
  public Wall {
    courses = List.copyOf(courses);
  }

  /** What the stone does at the jambs. */
  public enum Jambs {
    /** Turns into the opening. */
    RETURNED,
    /** Stops at it. */
    PLAIN
  }
}
