package headcourse.choose;

import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.layout.HeadLayout;
import java.util.List;

/** Whether two heads look the same, stone by stone. */
final class SameHead {
  private SameHead() {}

  static boolean are(HeadLayout a, HeadLayout b) {
    if (a.stones().size() != b.stones().size()) {
      return false;
    }
    for (int i = 0; i < a.stones().size(); i++) {
      List<Point> one = a.stones().get(i).outline().vertices(Tolerance.VERTEX);
      List<Point> other = b.stones().get(i).outline().vertices(Tolerance.VERTEX);
      if (one.size() != other.size()) {
        return false;
      }
      for (int k = 0; k < one.size(); k++) {
        if (one.get(k).distance(other.get(k)) > Tolerance.SAME) {
          return false;
        }
      }
    }
    return true;
  }
}
