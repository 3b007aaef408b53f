package headcourse.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Depth and nearness of convex figures. */
class OverlapTest {
  private static List<Point> square(double x, double y, double size) {
    return new Box(x, y, x + size, y + size).corners();
  }

  @Test
  void squaresOverlapAsDeepAsTheirSidesSay() {
    assertEquals(2, Overlap.depth(square(0, 0, 10), square(8, 3, 10)), 1e-12);
    assertEquals(-5, Overlap.depth(square(0, 0, 10), square(15, 3, 10)), 1e-12);
    assertEquals(3, Overlap.depth(square(0, 0, 10), new Point(7, -4), new Point(7, 20)), 1e-12);
    assertTrue(Overlap.deeper(square(0, 0, 10), square(15, 3, 10), -5.01));
    assertFalse(Overlap.deeper(square(0, 0, 10), square(15, 3, 10), -5));
  }

  @Test
  void deeperAgreesWithTheDepth() {
    int deep = 0;
    for (int seed = 0; seed < 2000; seed++) {
      Random random = new Random(seed);
      List<Point> a = quad(random);
      List<Point> b = random.nextBoolean() ? quad(random) : quad(random).subList(0, 2);
      double depth = Overlap.depth(a, b);
      double limit = 4 * random.nextDouble() - 2;
      assertEquals(depth > limit, Overlap.deeper(a, b, limit), "seed " + seed);
      deep += depth > limit ? 1 : 0;
    }
    assertTrue(deep > 200 && deep < 1800, deep + " of 2000 deeper");
  }

  // A rectangle turned about its middle.
  private static List<Point> quad(Random random) {
    Point middle = new Point(20 * random.nextDouble(), 20 * random.nextDouble());
    double w = 1 + 9 * random.nextDouble();
    double h = 1 + 3 * random.nextDouble();
    Similarity turn =
        Similarity.turn(random.nextBoolean() ? 0 : 3 * random.nextDouble())
            .then(Similarity.move(middle.x(), middle.y()));
    List<Point> corners = new ArrayList<>();
    for (Point p : new Box(-w, -h, w, h).corners()) {
      corners.add(turn.apply(p));
    }
    return corners;
  }
}
