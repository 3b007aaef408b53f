package headcourse.layout.side;

import java.util.List;

/** What upright and fanned heads do differently. */
public interface FlatGeometry {
  /**
   * The joint lines and ends open to one side.
   *
   * @param side what the side must keep to
   * @param striking depth of the striking point in mm where the other side has settled it, else NaN
   */
  List<SideCase> cases(FlatTerms.SideTerms side, double striking);

  /** The same stones on other terms. */
  FlatGeometry over(FlatTerms other);

  /** Whether the joints fan out from a striking point. */
  boolean fanned();

  /** Rise of the soffit in the middle, mm. */
  double camber();

  /** Whether stones equal, or changing by a constant step, can fill a side up to an end. */
  boolean divides(Lines lines, End end, int count, long step);

  /** Foot of joint {@code index} on the dividing line when they do. */
  long divided(Lines lines, End end, int count, long step, int index);
}
