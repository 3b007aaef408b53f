package headcourse.layout.curved;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.layout.HeadLayout;
import java.util.List;

/** What tests assert of whole heads. */
final class HeadAssert {
  private HeadAssert() {}

  /** Two heads are stone for stone the same, to a tolerance in mm. */
  static void same(HeadLayout a, HeadLayout b, double tolerance) {
    assertEquals(a.stones().size(), b.stones().size());
    for (int i = 0; i < a.stones().size(); i++) {
      List<Edge> x = a.stones().get(i).outline().edges();
      List<Edge> y = b.stones().get(i).outline().edges();
      assertEquals(x.size(), y.size());
      for (int k = 0; k < x.size(); k++) {
        same(x.get(k).from(), y.get(k).from(), tolerance);
        same(x.get(k).at(0.5), y.get(k).at(0.5), tolerance);
      }
    }
  }

  static void same(Point a, Point b, double tolerance) {
    assertEquals(0, a.distance(b), tolerance, () -> a + " and " + b);
  }

  /** Every edge begins where the one before ends, in the same direction. */
  static void smooth(Path path, double tolerance) {
    for (int i = 1; i < path.edges().size(); i++) {
      Edge before = path.edges().get(i - 1);
      Edge after = path.edges().get(i);
      same(before.to(), after.from(), 1e-6);
      assertEquals(0, before.tangent(1).cross(after.tangent(0)), tolerance);
    }
  }
}
