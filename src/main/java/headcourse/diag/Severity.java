package headcourse.diag;

import java.util.Locale;

/** How grave a message is. */
public enum Severity {
  /** Must be mended, or accepted with a reason where a rule allows it. */
  ERROR,
  /** Should be looked at. */
  WARNING,
  /** Good to know. */
  NOTE;

  /** The word in output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
