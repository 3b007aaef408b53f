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
 * @param above what of the wall above weighs on a head that is read as if it were solid
 * @param backing what stands behind the sheathing, from the soffit line up; heights rise
 */
public record Wall(
    Length bed,
    Length scratch,
    Sheathing sheathing,
    Length framing,
    Jambs jambs,
    List<Length> courses,
    Above above,
    List<Backing> backing) {
  /** Copies the lists. */
  public Wall {
    courses = List.copyOf(courses);
    backing = List.copyOf(backing);
  }

  /**
   * What stands behind at a height above the soffit line. Up to and with its {@code to} a line
   * counts; below the soffit line is the opening, and above the last line nobody knows.
   */
  public Backing behind(Length height) {
    if (height.picometres() >= 0) {
      for (Backing b : backing) {
        if (b.to() == null || height.compareTo(b.to()) <= 0) {
          return b;
        }
      }
    }
    return Backing.UNKNOWN;
  }

  /**
   * What a screw passes behind the setting bed before anything holds it: the scratch coat, and the
   * sheathing unless the job counts on it.
   */
  public Length idle() {
    return sheathing.holds() ? scratch : scratch.plus(sheathing.thickness());
  }

  /** What the stone does at the jambs. */
  public enum Jambs {
    /** Turns into the opening. */
    RETURNED,
    /** Stops at it. */
    PLAIN
  }
}
