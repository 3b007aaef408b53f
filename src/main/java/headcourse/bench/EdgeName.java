package headcourse.bench;

import java.util.Locale;

/** Which cut edge of a stone. */
public enum EdgeName {
  /** Towards the centre line; the key has none. */
  INNER,
  /** Away from the centre line; the key has none. */
  OUTER,
  /** The key's left. */
  LEFT,
  /** The key's right. */
  RIGHT,
  /** The upper edge. */
  TOP,
  /** The lower edge of a stone cut from flats. */
  SOFFIT;

  /** The word in output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
