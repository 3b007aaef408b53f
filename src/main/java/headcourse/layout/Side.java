package headcourse.layout;

import java.util.Locale;

/** Which side of the centre line, seen from outside. */
public enum Side {
  /** On the centre line. */
  CENTRE,
  /** Left as you face the wall. */
  LEFT,
  /** Right as you face the wall. */
  RIGHT;

  /** The word in output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** −1 on the left, +1 on the right, 0 on the centre line. */
  public int sign() {
    return this == LEFT ? -1 : this == RIGHT ? 1 : 0;
  }
}
