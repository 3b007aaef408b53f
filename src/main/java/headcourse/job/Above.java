package headcourse.job;

import headcourse.units.Length;

/**
 * The wall above a head that weighs on it when it is read as solid.
 *
 * @param kind how much of it
 * @param height how high it stands over the head, for {@link Kind#LEVEL}; else zero
 */
public record Above(Kind kind, Length height) {
  /** The head alone. */
  public static final Above NOTHING = new Above(Kind.NOTHING, Length.ZERO);

  /** How much of the wall. */
  public enum Kind {
    /** None: the head carries itself. */
    NOTHING,
    /** The triangle of 45° over the clear width. */
    TRIANGLE,
    /** All of it up to a level. */
    LEVEL
  }
}
