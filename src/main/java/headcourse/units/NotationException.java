package headcourse.units;

/** A text that is not written as its kind of value is; the message says what is wrong. */
public final class NotationException extends Exception {
  private static final long serialVersionUID = 1L;

  /** With what is wrong and what is expected, one line. */
  public NotationException(String message) {
    super(message);
  }
}
