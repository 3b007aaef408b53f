package headcourse.bench.builds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Draws fall where the densities say. */
class ZigguratTest {
  private static final int DRAWS = 1_000_000;

  /** Standard normal distribution function, from a printed table (recalled from memory). */
  private static final double[][] NORMAL = {
    {-3, 0.001349898}, {-2, 0.022750132}, {-1, 0.158655254}, {-0.5, 0.308537539}, {0, 0.5},
    {0.1, 0.539827837}, {1, 0.841344746}, {2, 0.977249868}, {3, 0.998650102}, {3.7, 0.999892200}
  };

  @Test
  void normalDrawsFollowTheTable() {
    share(Ziggurat.NORMAL::either, NORMAL);
  }

  @Test
  void exponentialDrawsFollowTheirDistribution() {
    double[][] table = new double[9][];
    double[] at = {0.01, 0.1, 0.5, 1, 2, 4, 6, 7.7, 9};
    for (int i = 0; i < at.length; i++) {
      table[i] = new double[] {at[i], 1 - Math.exp(-at[i])};
    }
    share(Ziggurat.EXPONENTIAL::draw, table);
  }

  @Test
  void signsAndMomentsAreRight() {
    SplitMix from = new SplitMix(42);
    double[] sums = new double[5];
    for (int i = 0; i < DRAWS; i++) {
      double x = Ziggurat.NORMAL.either(from);
      for (int k = 1; k <= 4; k++) {
        sums[k] += Math.pow(x, k);
      }
    }
    // Variances of the powers of a normal number: 1, 2, 15, 96.
    double root = Math.sqrt(DRAWS);
    assertEquals(0, sums[1] / DRAWS, 4 / root);
    assertEquals(1, sums[2] / DRAWS, 4 * Math.sqrt(2) / root);
    assertEquals(0, sums[3] / DRAWS, 4 * Math.sqrt(15) / root);
    assertEquals(3, sums[4] / DRAWS, 4 * Math.sqrt(96) / root);
  }

  @Test
  void theSameNumbersOnEveryMachine() {
    // SplitMix64 from seed 1234567, as its authors' reference code prints them (from memory).
    SplitMix from = new SplitMix(1234567);
    assertEquals(6457827717110365317L, from.next());
    assertEquals(3203168211198807973L, from.next());
    assertEquals(-8629252141511181193L, from.next());
  }

  private static void share(ToDoubleFunction<SplitMix> draw, double[][] table) {
    SplitMix from = new SplitMix(7);
    int[] below = new int[table.length];
    for (int i = 0; i < DRAWS; i++) {
      double x = draw.applyAsDouble(from);
      for (int k = 0; k < table.length; k++) {
        below[k] += x < table[k][0] ? 1 : 0;
      }
    }
    for (int k = 0; k < table.length; k++) {
      double p = table[k][1];
      double within = 4 * Math.sqrt(p * (1 - p) / DRAWS);
      assertEquals(p, (double) below[k] / DRAWS, within, "at " + table[k][0]);
    }
  }
}
