package headcourse.choose;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.units.Length;
import java.util.List;

/**
 * What a client sees at once. Heads of one look are compared with each other; one look is never
 * dropped for another.
 *
 * @param shape the shape's name
 * @param rhythm how widths run
 * @param joint width of the joints; zero for dry ones
 */
public record Look(String shape, HeadSpec.Rhythm rhythm, Length joint) {
  static Look of(Job job) {
    HeadSpec head = job.openings().get(0).head();
    return new Look(head.shape(), head.stones().rhythm(), job.setting().joint());
  }

  /** Shape and rhythm. */
  List<Object> seen() {
    return List.of(shape, rhythm);
  }

  /** Whether another has the same shape and rhythm. */
  boolean like(Look o) {
    return shape.equals(o.shape) && rhythm == o.rhythm;
  }
}
