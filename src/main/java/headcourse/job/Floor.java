package headcourse.job;

import headcourse.units.Length;

/**
 * Where an opening stands over floor and ground.
 *
 * @param sill height of the opening's foot above the floor, 0 of a door; null where not given
 * @param ground how far the ground lies below the floor, negative where above; null where not given
 */
public record Floor(Length sill, Length ground) {
  /** An opening of which the job says nothing. */
  public static final Floor UNSAID = new Floor(null, null);
}
