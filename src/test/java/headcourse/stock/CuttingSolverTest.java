package headcourse.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.stock.CuttingProblem.Bin;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cutting problems with a known answer. */
class CuttingSolverTest {
  static CuttingSolver.Result solve(long raw, long kerf, long[] lengths, int[] demand) {
    boolean[] takes = new boolean[lengths.length];
    Arrays.fill(takes, true);
    int parts = Arrays.stream(demand).sum();
    CuttingProblem p =
        new CuttingProblem(
            demand,
            Nesting.ofLengths(lengths, kerf),
            List.of(new Bin(0, raw, parts, new Cost(0, 1, 1), takes)));
    CuttingSolver.Result r = new CuttingSolver(2_000_000).solve(p);
    Checker.check(p, r);
    return r;
  }

  /** Scale, so that the slack for rounding (64 units) never lets a length too long through. */
  static final long SCALE = 1_000_000;

  static CuttingSolver.Result scaled(long raw, long[] lengths, int[] demand) {
    return solve(raw * SCALE, 0, Arrays.stream(lengths).map(l -> l * SCALE).toArray(), demand);
  }

  /** A public constraint-modelling handbook: raw 10; 7 × 2, 5 × 2, 3 × 4. */
  @Test
  void handbookExampleTakesFour() {
    CuttingSolver.Result r = scaled(10, new long[] {7, 5, 3}, new int[] {2, 2, 4});
    assertEquals(4, r.packing().cost().lead());
    assertTrue(r.proved());
  }

  /** Arithmetic: stock 96, pieces of 24, kerf 1/8: three from one stick. In eighths. */
  @Test
  void kerfsCount() {
    long e = SCALE;
    CuttingSolver.Result r = solve(768 * e, e, new long[] {192 * e}, new int[] {3});
    assertEquals(1, r.packing().cost().lead());
    r = solve(768 * e, e, new long[] {192 * e}, new int[] {4});
    assertEquals(2, r.packing().cost().lead());
    assertTrue(r.proved());
  }

  /**
   * Chvátal, Linear Programming (1983), the cutting-stock chapter: raws of 100; 97 of 45, 610 of
   * 36, 395 of 31, 211 of 14. Linear bound 452.25, answer 453.
   */
  @Test
  void chvatal() {
    CuttingSolver.Result r =
        scaled(100, new long[] {45, 36, 31, 14}, new int[] {97, 610, 395, 211});
    assertEquals(453, r.packing().cost().lead());
    assertEquals(453, r.bound().lead());
    assertTrue(r.proved());
  }
}
