package headcourse.sheet;

import headcourse.bench.HeadWork;
import headcourse.layout.Bearing;
import headcourse.layout.Side;
import headcourse.units.LengthFormat;

/** The sentence that says how far both ends of a head bear, and where that is measured. */
public final class BearingLine {
  private BearingLine() {}

  /** The sentence for a head. */
  public static String of(SheetContext context, HeadWork head) {
    LengthFormat f = context.format();
    Bearing left = head.layout().bearing(Side.LEFT);
    Bearing right = head.layout().bearing(Side.RIGHT);
    return context.say(
        head.layout().fanned()
            ? "wall.bears-fanned"
            : head.layout().curved() ? "wall.bears-curved" : "wall.bears",
        f.withUnit(left.onWall(f.grid())),
        f.withUnit(right.onWall(f.grid())),
        f.withUnit(left.onTop(f.grid())),
        f.withUnit(right.onTop(f.grid())));
  }
}
