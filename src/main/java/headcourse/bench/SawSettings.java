package headcourse.bench;

import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import java.util.ArrayList;
import java.util.List;

/**
 * Which stones are cut to width at one setting of the fence: those as wide along the soffit, their
 * edges off square alike. Stones that were cut before belong to none.
 */
public final class SawSettings {
  private final List<StoneFrame> firsts = new ArrayList<>();

  /** Settings that no stone has been cut at yet. */
  public SawSettings() {}

  /** The number of a stone's setting, from 0 in order of first appearance; −1 for a cut one. */
  public int of(PlacedStone stone) {
    if (stone.fitted()) {
      return -1;
    }
    StoneFrame frame = StoneFrame.of(stone);
    int i = 0;
    while (i < firsts.size() && !same(firsts.get(i), frame)) {
      i++;
    }
    if (i == firsts.size()) {
      firsts.add(frame);
    }
    return i;
  }

  /** How many there are so far. */
  public int count() {
    return firsts.size();
  }

  private static boolean same(StoneFrame a, StoneFrame b) {
    double wide = a.lowerLeft().distance(a.lowerRight());
    return Math.abs(wide - b.lowerLeft().distance(b.lowerRight())) <= Tolerance.SAME
        && Math.abs(lean(a, Where.LEFT) - lean(b, Where.LEFT)) <= Tolerance.SAME
        && Math.abs(lean(a, Where.RIGHT) - lean(b, Where.RIGHT)) <= Tolerance.SAME;
  }

  private static double lean(StoneFrame frame, Where side) {
    Vec up = frame.own(frame.upward(side));
    return up.x() / up.y();
  }
}
