package headcourse.layout;

import java.util.Locale;

/** What a stone is in its head. */
public enum Role {
  /** On the centre line. */
  KEY,
  /** Between the key and an end. */
  STONE,
  /** The last on its side. */
  END;

  /** The word in output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
