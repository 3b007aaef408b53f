package headcourse.layout.curved;

import headcourse.geom.Tolerance;
import java.util.List;

/**
 * The wall's bed joints above the springing line. Above the last one given they go on as the last
 * course does.
 *
 * @param beds heights of those that were given, lowest first
 * @param height height of a course where none were given
 */
record Courses(List<Double> beds, double height) {
  /** Copies the heights. */
  Courses {
    beds = List.copyOf(beds);
  }

  /** The lowest bed joint at or above a height. */
  double atOrAbove(double y) {
    double from = 0;
    double step = height;
    for (double bed : beds) {
      if (bed >= y - Tolerance.SAME) {
        return bed;
      }
      step = bed - from > Tolerance.SAME ? bed - from : step;
      from = bed;
    }
    return from + Math.ceil((y - from - Tolerance.SAME) / step) * step;
  }
}
