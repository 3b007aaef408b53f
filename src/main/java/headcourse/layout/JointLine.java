package headcourse.layout;

import headcourse.geom.Point;
import headcourse.units.Length;

/**
 * The line that two neighbouring stones share, or the end line of a side. Numbered outwards: joint
 * 0 lies at the key (or on the centre line of a head without one), joint n is the end.
 *
 * @param side which side
 * @param index from 0 outwards
 * @param foot where it meets the soffit
 * @param head where it meets the top
 * @param soffitMark running mark on the soffit line: distance from the centre line to the edge of
 *     the stone on its inner side, as printed; never negative
 * @param topMark the same on the top line
 * @param inner mark of the stone towards the centre, or empty on the centre line of a keyless head
 *     seen from the other side
 * @param outer mark of the stone away from it, or empty at an end
 */
public record JointLine(
    Side side,
    int index,
    Point foot,
    Point head,
    Length soffitMark,
    Length topMark,
    String inner,
    String outer) {}
