package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.layout.Bearing;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.Optional;

/** The two ends of a head. */
final class Ends {
  private Ends() {}

  /** The outermost stone of a side; empty for a side without stones. */
  static Optional<Piece> of(HeadWork head, Side side) {
    Piece end = null;
    for (Piece p : head.pieces()) {
      if (p.stone().side() == side && (end == null || p.stone().index() > end.stone().index())) {
        end = p;
      }
    }
    return Optional.ofNullable(end);
  }

  /** How far the end bears on the wall. */
  static Length bearing(HeadWork head, Side side) {
    return head.layout().bearing(side).onWall();
  }

  /** Whether an end springs from the jamb itself, as a fan or a ring may; within a tick. */
  static boolean springs(RuleContext c, HeadWork head, Side side) {
    return switch (Shape.of(head)) {
      case SOLDIER -> false;
      case JACK -> bearing(head, side).abs().compareTo(c.job().grid().tick()) < 0;
      case CURVED -> true;
    };
  }

  /** How much wall the end rests over: a jack arch leans on it up to its top line. */
  static Length reach(HeadWork head, Side side) {
    Bearing bearing = head.layout().bearing(side);
    return head.layout().fanned() ? bearing.onTop() : bearing.onWall();
  }

  /** The wall beside the opening that the head may run onto; empty where it is ample. */
  static Optional<Length> wall(HeadWork head, Side side) {
    return Optional.ofNullable(
        side == Side.LEFT
            ? head.layout().opening().wallLeft()
            : head.layout().opening().wallRight());
  }
}
