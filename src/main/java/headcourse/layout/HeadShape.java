package headcourse.layout;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.ShapeDef;

/**
 * A shape of head: what it asks for, and how it is set out. One file each, registered in {@code
 * headcourse.layout.shapes.Shapes}.
 */
public interface HeadShape {
  /** Its name and its own keys. */
  ShapeDef definition();

  /** Sets out the head over an opening whose {@code head.shape} is this one. */
  Solution setOut(Job job, Opening opening);

  /** Whether its soffit is straight or cambered, so that it is set out from the jambs as built. */
  default boolean flat() {
    return false;
  }
}
