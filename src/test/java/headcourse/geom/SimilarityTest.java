package headcourse.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Similarity maps, and curves through them, against mapping one place after the other. */
class SimilarityTest {
  private static Similarity any(Random r) {
    return new Similarity(
        r.nextDouble() - 0.5, r.nextDouble() - 0.5, r.nextBoolean(), r.nextInt(90), r.nextInt(90));
  }

  @Test
  void oneAfterTheOtherIsBothAtOnce() {
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      Similarity one = any(random);
      Similarity other = any(random);
      Point p = new Point(random.nextInt(100), random.nextInt(100));
      assertEquals(0, one.then(other).apply(p).distance(other.apply(one.apply(p))), 1e-9);
      Point q = p.plus(Vec.direction(1.1));
      Vec mapped = one.apply(q).minus(one.apply(p));
      assertEquals(1, mapped.unit().dot(Vec.direction(one.applyAngle(1.1))), 1e-12);
      assertEquals(one.scale(), mapped.length(), 1e-9);
    }
  }

  @Test
  void chordsOfACubicKeepWithinTheTolerance() {
    Random r = new Random(4);
    for (int i = 0; i < 100; i++) {
      Cubic c =
          new Cubic(
              new Point(r.nextInt(100), r.nextInt(100)),
              new Point(r.nextInt(100), r.nextInt(100)),
              new Point(r.nextInt(100), r.nextInt(100)),
              new Point(r.nextInt(100), r.nextInt(100)));
      var chords = c.flattened(0.05);
      assertEquals(c.to(), chords.get(chords.size() - 1));
      for (int k = 0; k <= 500; k++) {
        Point on = c.at(k / 500.0);
        double off = Double.POSITIVE_INFINITY;
        Point from = c.from();
        for (Point to : chords) {
          Vec along = to.minus(from);
          double t = on.minus(from).dot(along) / Math.max(1e-12, along.dot(along));
          off = Math.min(off, on.distance(from.towards(to, Math.max(0, Math.min(1, t)))));
          from = to;
        }
        assertTrue(off <= 0.05, c + " is off by " + off);
      }
    }
  }
}
