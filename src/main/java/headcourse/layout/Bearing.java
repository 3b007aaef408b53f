package headcourse.layout;

import headcourse.units.Grid;
import headcourse.units.Length;

/**
 * How far an end bears: the horizontal distance from the jamb line to the end stone's outermost
 * point that lies on the wall. It is measured to the stone, not to the middle of the joint beyond
 * it; negative where the stone stops short of the jamb.
 *
 * @param onWall on the soffit line in flat heads, at the foot of the skewback on the extrados in
 *     curved ones, exact
 * @param onTop the same on the top line, where a jack arch bears as well; in curved heads as on the
 *     wall
 */
public record Bearing(Length onWall, Length onTop) {
  static Bearing of(HeadLayout head, Side side) {
    PlacedStone.Feet feet = head.end(side).feet();
    boolean left = side == Side.LEFT;
    Length low = (left ? feet.leftSoffit().negated() : feet.rightSoffit()).minus(head.jamb(side));
    Length high = (left ? feet.leftTop().negated() : feet.rightTop()).minus(head.jamb(side));
    return new Bearing(head.curved() ? high : low, high);
  }

  /**
   * A bearing as it is printed wherever it is measured or checked: the nearest step of the grid,
   * and from midway between two the lesser, so that nothing is said to bear more than it does.
   */
  public static Length printed(Length bearing, Grid grid) {
    Length rest = bearing.minus(grid.ticks(grid.floor(bearing)));
    return rest.times(2).compareTo(grid.tick()) <= 0
        ? bearing.minus(rest)
        : grid.ticks(grid.ceil(bearing));
  }

  /** The bearing on the wall, as printed. */
  public Length onWall(Grid grid) {
    return printed(onWall, grid);
  }

  /** The bearing on the top line, as printed. */
  public Length onTop(Grid grid) {
    return printed(onTop, grid);
  }
}
