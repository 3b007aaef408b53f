package headcourse.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Chords for arcs: within the tolerance, no more of them than it takes, at any radius. */
class FlattenedTest {
  @Test
  void chordsKeepWithinTheToleranceAndAreFew() {
    Random random = new Random(5);
    for (int i = 0; i < 400; i++) {
      double radius = Math.pow(10, 1 + 11 * random.nextDouble());
      // As long as a head, whatever the radius.
      double sweep = Math.min(Math.PI, (100 + 8000 * random.nextDouble()) / radius);
      double tolerance = random.nextBoolean() ? 0.05 : 0.001;
      Arc arc = new Arc(Point.ORIGIN, radius, random.nextDouble(), -sweep);
      int n = arc.flattened(tolerance).size();
      double sagitta = 2 * radius * Math.pow(Math.sin(sweep / n / 4), 2);
      String which = "r " + radius + ", sweep " + sweep + ", " + n + " chords";
      assertTrue(sagitta <= tolerance * (1 + 1e-9), which);
      if (n > 1) {
        double fewer = 2 * radius * Math.pow(Math.sin(sweep / (n - 1) / 4), 2);
        assertTrue(fewer > tolerance * (1 - 1e-9), which + " are too many");
      }
    }
  }

  @Test
  void aRadiusBeyondThePrecisionOfACosineStillEnds() {
    // 1 − 1e-3/1e14 is 1 to the last bit, so its arc cosine would be nought.
    assertEquals(1, new Arc(Point.ORIGIN, 1e14, 0, 1e-12).flattened(1e-3).size());
    assertEquals(1, new EllipticArc(Point.ORIGIN, 1e14, 1e3, 0, 0, 1e-12).flattened(1e-3).size());
    assertTrue(new Arc(Point.ORIGIN, 1e14, 0, 3).flattened(1e-9).size() <= 1 << 14);
  }

  @Test
  void ellipsesKeepWithinTheTolerance() {
    Random random = new Random(6);
    for (int i = 0; i < 100; i++) {
      double a = 50 + 2000 * random.nextDouble();
      double b = a * (0.1 + 2 * random.nextDouble());
      EllipticArc arc = new EllipticArc(Point.ORIGIN, a, b, 0, 3 * random.nextDouble(), -1.2);
      List<Point> points = new ArrayList<>(List.of(arc.from()));
      points.addAll(arc.flattened(0.05));
      int n = points.size() - 1;
      for (int k = 0; k < n; k++) {
        Vec along = points.get(k + 1).minus(points.get(k)).unit();
        for (int m = 1; m < 20; m++) {
          Vec to = arc.at((k + m / 20.0) / n).minus(points.get(k));
          assertTrue(Math.abs(along.cross(to)) <= 0.05, a + " × " + b);
        }
      }
    }
  }
}
