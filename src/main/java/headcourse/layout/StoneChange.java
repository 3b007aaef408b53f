package headcourse.layout;

import headcourse.units.Length;

/**
 * How a stone differs from the head as it was set out before stones were fitted.
 *
 * @param mark its mark
 * @param kind what became of it
 * @param bottomBefore its lower width before; null where it is new
 * @param topBefore its upper width before; null where it is new
 * @param bottom its lower width now; null where it is gone
 * @param top its upper width now; null where it is gone
 * @param shift how far its middle on the soffit line moved away from the centre line; zero where it
 *     is new or gone
 */
public record StoneChange(
    String mark,
    Kind kind,
    Length bottomBefore,
    Length topBefore,
    Length bottom,
    Length top,
    Length shift) {
  /** What became of a stone. */
  public enum Kind {
    /** It is cut otherwise, so its ticket changes. */
    RECUT,
    /** It is cut as before and stands elsewhere. */
    MOVED,
    /** It was not there. */
    NEW,
    /** It is not there any more. */
    GONE;

    /** Whether a ticket printed before is wrong. */
    public boolean ticketChanges() {
      return this != MOVED;
    }
  }
}
