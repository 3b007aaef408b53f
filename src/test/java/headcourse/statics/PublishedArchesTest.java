package headcourse.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.statics.Rings.Weighed;
import headcourse.statics.Standing.Verdict;
import headcourse.statics.Yield.How;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finely divided circular arches against published figures. */
class PublishedArchesTest {
  private static final double SEMICIRCLE = Math.PI / 2;
  private static final int FINE = 600;
  private static final double ROUGH = 2;

  private static Standing standing(double half, double friction, Weighed weighed) {
    return StandingFinder.of(Rings.of(half, 0.25, FINE, friction, weighed), 0.25, 10);
  }

  /** Angle from the crown of the weightiest hinge at the soffit, degrees. */
  private static double hinge(Standing s, double half) {
    Yield hinge =
        s.yields().stream().filter(y -> y.how() == How.HINGE_FOOT).findFirst().orElseThrow();
    int n = s.joints().size() - 1;
    return Math.toDegrees(Math.abs(2.0 * hinge.joint() / n - 1) * half);
  }

  /**
   * Check 32: Milankovitch's 0.10748 with the weights where they are, hinge at 54.48° (Cocchetti,
   * Colasante and Rizzi 2011; Alexakis and Makris 2013).
   */
  @Test
  void semicircle() {
    Standing s = standing(SEMICIRCLE, ROUGH, Weighed.TRULY);
    assertEquals(0.10748, Rings.ratio(s.least()), 1e-5);
    assertEquals(54.48, hinge(s, SEMICIRCLE), 0.35);
    assertTrue(s.yields().stream().allMatch(y -> y.how() != How.SLIDE));
    assertFalse(s.pushes());
    for (double[] each : new double[][] {{0.107, -1}, {0.108, 1}}) {
      Blocks b = Rings.byMiddle(SEMICIRCLE, each[0], FINE, ROUGH, Weighed.TRULY);
      assertEquals(each[1], Math.signum(new Equilibrium(b).safety(10).safety()));
      assertEquals(each[1] > 0, new Equilibrium(b).leastThrust().isPresent());
    }
  }

  /**
   * The thrust of check 32, 0.6209 w R with w the weight along the middle line, of which the whole
   * arch weighs π R. The published figure belongs to the least ring; ours is found a hair above it.
   */
  @Test
  void semicircularThrust() {
    for (Weighed weighed : Weighed.values()) {
      Blocks b = Rings.byMiddle(SEMICIRCLE, 0.10749, FINE, ROUGH, weighed);
      double thrust = new Equilibrium(b).leastThrust().orElseThrow().thrust();
      assertEquals(0.6209, thrust * Math.PI, weighed == Weighed.TRULY ? 5e-4 : 1.5e-3);
    }
  }

  /**
   * Check 33: Heyman's simplification gives 0.10597 and 58.83° (from memory). It leaves out what
   * the least thrust line does at a radial joint: with the same weights the blocks want 1.4 % more
   * (0.10743, Cocchetti, Colasante and Rizzi 2011), so at Heyman's depth they do not stand.
   */
  @Test
  void heymansSimplification() {
    HeymanRing ring = HeymanRing.of(SEMICIRCLE);
    assertEquals(58.83, Math.toDegrees(ring.hinge()), 0.01);
    assertEquals(0.10597, ring.ratio(), 1e-5);
    Standing s = standing(SEMICIRCLE, ROUGH, Weighed.MIDDLE_LINE);
    assertEquals(0.10743, Rings.ratio(s.least()), 1e-5);
    Blocks there = Rings.byMiddle(SEMICIRCLE, ring.ratio(), FINE, ROUGH, Weighed.MIDDLE_LINE);
    assertTrue(new Equilibrium(there).safety(10).safety() < 0);
    // Of lesser arches, too, it asks for a little less than their blocks do.
    for (double degrees : new double[] {75, 45}) {
      double half = Math.toRadians(degrees);
      double blocks = Rings.ratio(standing(half, ROUGH, Weighed.MIDDLE_LINE).least());
      double heyman = HeymanRing.of(half).ratio();
      assertTrue(heyman < blocks && heyman > 0.97 * blocks, degrees + ": " + heyman);
    }
  }

  /** Of an arc that all but lies down: a number, and of no account beside its radius. */
  @Test
  void flattestRing() {
    for (double half : new double[] {1e-2, 1e-4, 4e-5, 1e-7}) {
      double ratio = HeymanRing.of(half).ratio();
      assertTrue(Math.abs(ratio) < half * half, half + ": " + ratio);
    }
  }

  /** Check 34: recomputed with the weight along the middle line. */
  @ParameterizedTest
  @CsvSource({"75, 0.05368, 47.50", "45, 0.00750, 30.52"})
  void lesserArches(double half, double ratio, double angle) {
    double a = Math.toRadians(half);
    Standing s = standing(a, ROUGH, Weighed.MIDDLE_LINE);
    assertEquals(ratio, Rings.ratio(s.least()), 6e-6);
    assertEquals(angle, hinge(s, a), 0.7);
  }

  /**
   * Check 45: Cocchetti and Rizzi 2020, Table 3; friction from 0.3958 up changes nothing, at 0.3092
   * the ring must be 0.2006 of its radius, and no ring stands below.
   */
  @Test
  void friction() {
    for (double enough : new double[] {0.3959, 0.40, 1.0}) {
      Standing s = standing(SEMICIRCLE, enough, Weighed.MIDDLE_LINE);
      assertEquals(0.1074, Rings.ratio(s.least()), 5e-5, "friction " + enough);
      assertEquals(54.5, hinge(s, SEMICIRCLE), 0.35);
      assertTrue(s.yields().stream().noneMatch(y -> y.how() == How.SLIDE));
    }
    double low = Rings.ratio(standing(SEMICIRCLE, 0.35, Weighed.MIDDLE_LINE).least());
    assertTrue(low > 0.11 && low < 0.2006, "" + low);
    assertEquals(
        0.2006,
        Rings.ratio(
            StandingFinder.of(
                    Rings.of(SEMICIRCLE, 0.2237, FINE, 0.30926, Weighed.MIDDLE_LINE), 0.2237, 10)
                .least()),
        5e-4);
    Standing slides = standing(SEMICIRCLE, 0.3085, Weighed.MIDDLE_LINE);
    assertEquals(Verdict.FALLS, slides.verdict());
    assertNull(slides.least());
    assertNull(slides.thrust());
    assertTrue(slides.yields().stream().anyMatch(y -> y.how() == How.SLIDE));
  }

  /** The more blocks, the nearer, and no coarse division asks for more than the fine one. */
  @Test
  void divisionConverges() {
    double last = 0;
    for (int n : new int[] {8, 16, 32, 64, 128, 256}) {
      Standing s = StandingFinder.of(Rings.of(SEMICIRCLE, 0.25, n, ROUGH, Weighed.TRULY), 0.25, 10);
      double ratio = Rings.ratio(s.least());
      assertTrue(ratio <= 0.107479 && ratio > 0.1, n + ": " + ratio);
      if (n >= 64) {
        assertTrue(0.10748 - ratio < 0.2 / n / Math.sqrt(n) * 8, n + ": " + ratio);
      }
      last = ratio;
    }
    assertEquals(0.10748, last, 2e-5);
  }

  /** What a head is at its own depth and what its least depth says agree. */
  @Test
  void aRingOfTheLeastDepthStandsAndAThinnerDoesNot() {
    for (int n : new int[] {7, 12, 41}) {
      Standing s = StandingFinder.of(Rings.of(1.2, 0.2, n, 0.6, Weighed.TRULY), 0.2, 10);
      assertNotNull(s.least());
      for (double off : new double[] {0.9999, 1.0001}) {
        Blocks b = Rings.of(1.2, s.least() * off, n, 0.6, Weighed.TRULY).apply(1);
        assertEquals(off > 1, new Equilibrium(b).safety(10).safety() >= 0);
      }
    }
  }
}
