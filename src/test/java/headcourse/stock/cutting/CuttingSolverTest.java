package headcourse.stock.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cutting problems with a known answer. */
class CuttingSolverTest {
  private static Nesting squares(long[] lengths, long kerf) {
    return new Nesting(
        Arrays.stream(lengths).mapToObj(l -> Profile.rectangle(l / NM, 100)).toList(),
        Arrays.stream(lengths).mapToObj(l -> false).toList(),
        kerf / NM);
  }

  private static final double NM = 1e6;

  static CuttingSolver.Result solve(long raw, long kerf, long[] lengths, int[] demand) {
    boolean[] takes = new boolean[lengths.length];
    Arrays.fill(takes, true);
    int parts = Arrays.stream(demand).sum();
    CuttingProblem p =
        new CuttingProblem(
            demand,
            squares(lengths, kerf),
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

  /**
   * A paper mill's order, raws of 5600 mm, thirteen widths: 73 raws, material for 72.7. The worked
   * example of a public encyclopedia's article on the cutting-stock problem (from memory; its
   * figure of 0.401 % waste at 73 raws agrees with these numbers).
   */
  @Test
  void paperMill() {
    long[] widths = {1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200};
    int[] demand = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
    long material = 0;
    for (int i = 0; i < widths.length; i++) {
      material += widths[i] * demand[i];
    }
    assertEquals(0.00401, 1 - material / (73 * 5600.0), 5e-6);
    CuttingSolver.Result r = scaled(5600, widths, demand);
    assertEquals(73, r.packing().cost().lead());
    assertTrue(r.proved());
  }

  /**
   * Fourer, Gay, Kernighan, AMPL: A Modeling Language for Mathematical Programming, the roll-trim
   * example: rolls of 110; linear bound 46.25, answer 47 (from memory).
   */
  @Test
  void rollTrim() {
    CuttingSolver.Result r =
        scaled(110, new long[] {20, 45, 50, 55, 75}, new int[] {48, 35, 24, 10, 8});
    assertEquals(47, r.packing().cost().lead());
    assertTrue(r.proved());
  }

  /**
   * Johnson (1973), where longest-first needs 11 m bins and 9 m do: 6 m of 1/2 + e, 6 m of 1/4 + 2
   * e, 6 m of 1/4 + e, 12 m of 1/4 − 2 e (from memory; that 9 m do is seen by filling them).
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 20})
  void whereLongestFirstIsWorst(int m) {
    long[] lengths = {510, 270, 260, 230};
    CuttingSolver.Result r = scaled(1000, lengths, new int[] {6 * m, 6 * m, 6 * m, 12 * m});
    assertEquals(9 * m, r.packing().cost().lead());
    assertTrue(r.proved());
  }

  /**
   * Martello and Toth, Knapsack Problems (1990), the example of the bin-packing chapter: nine items
   * that fill three bins of 100 by weight, but need four (from memory; 70, 60 and 50 lie apart, one
   * of the three 33 fits beside each of the last two only).
   */
  @Test
  void materialForThreeNeedsFour() {
    CuttingSolver.Result r =
        scaled(100, new long[] {70, 60, 50, 33, 11, 7, 3}, new int[] {1, 1, 1, 3, 1, 1, 1});
    assertEquals(4, r.packing().cost().lead());
    assertTrue(r.proved());
  }

  /**
   * Triplets after Falkenauer (1996): every raw of 1000 is filled by three pieces, one of 380 to
   * 490 and two of at least 250, so as many raws as triplets are needed, and longest-first needs
   * more.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void triplets(long seed) {
    java.util.Random r = new java.util.Random(seed);
    int n = 13;
    long[] lengths = new long[3 * n];
    int[] demand = new int[3 * n];
    Arrays.fill(demand, 1);
    for (int i = 0; i < n; i++) {
      long a = 380 + r.nextInt(111);
      long b = 250 + r.nextInt((int) ((1000 - a) / 2 - 249));
      lengths[3 * i] = a;
      lengths[3 * i + 1] = b;
      lengths[3 * i + 2] = 1000 - a - b;
    }
    CuttingSolver.Result result = scaled(1000, lengths, demand);
    assertEquals(n, result.packing().cost().lead(), "seed " + seed);
    assertTrue(result.proved());
  }
}
