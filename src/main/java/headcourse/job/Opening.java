package headcourse.job;

import headcourse.units.Length;
import java.util.List;

/**
 * An opening and the head over it.
 *
 * @param path where it stands in the job, as in {@code openings[0]}
 * @param mark its mark, as in D1
 * @param label what it is called; may be empty
 * @param count how many are identical
 * @param at its centre line along the wall, seen from outside from left to right; one for each that
 *     is identical, or none where the job gives no places
 * @param level level of the line its head stands on (soffit line, or springing line of a curved
 *     head), from a mark that all openings share; null where not given
 * @param width finished clear width between the jambs
 * @param height finished height, or null
 * @param reveal depth of the soffit that is covered, from the face of the stone
 * @param wallLeft wall on the left that the head may run onto, or null where it is ample
 * @param wallRight wall on the right, or null where it is ample
 * @param measured as built, or null
 * @param head what is set over it
 * @param floor where it stands over floor and ground
 */
public record Opening(
    String path,
    String mark,
    String label,
    int count,
    List<Length> at,
    Length level,
    Length width,
    Length height,
    Length reveal,
    Length wallLeft,
    Length wallRight,
    Measured measured,
    HeadSpec head,
    Floor floor) {
  /** An opening whose floor the job does not say. */
  public Opening(
      String path,
      String mark,
      String label,
      int count,
      List<Length> at,
      Length level,
      Length width,
      Length height,
      Length reveal,
      Length wallLeft,
      Length wallRight,
      Measured measured,
      HeadSpec head) {
    this(
        path,
        mark,
        label,
        count,
        at,
        level,
        width,
        height,
        reveal,
        wallLeft,
        wallRight,
        measured,
        head,
        Floor.UNSAID);
  }

  /** Copies the places. */
  public Opening {
    at = List.copyOf(at);
  }

  /** The same with another head. */
  public Opening with(HeadSpec other) {
    return new Opening(
        path, mark, label, count, at, level, width, height, reveal, wallLeft, wallRight, measured,
        other, floor);
  }
}
