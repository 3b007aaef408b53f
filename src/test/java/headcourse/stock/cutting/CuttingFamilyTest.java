package headcourse.stock.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Random problems of every family, with yards of one to three kinds of blank: with prices or not,
 * as many as needed or not.
 */
class CuttingFamilyTest {
  private static final long STEPS = 2_000_000;

  private static CuttingProblem problem(CuttingFamily family, long seed, int least, int most) {
    Random r = new Random(1000 * family.ordinal() + seed);
    return family.make(r, least + r.nextInt(most - least + 1));
  }

  /** The plan costs no more than the best of all ways to part the stones among blanks. */
  @ParameterizedTest
  @EnumSource(CuttingFamily.class)
  void smallOnesAreTheBestOfAll(CuttingFamily family) {
    for (long seed = 0; seed < Seeds.of(12); seed++) {
      CuttingProblem p = problem(family, seed, 4, 6);
      CuttingSolver.Result r = new CuttingSolver(STEPS).solve(p);
      Checker.check(p, r);
      String what = family + " seed " + seed;
      assertTrue(r.proved(), what);
      assertEquals(new AllWays(p).best(), r.packing().cost(), what);
    }
  }

  /** Twelve to forty stones: proved. */
  @ParameterizedTest
  @EnumSource(CuttingFamily.class)
  void upToFortyAreProved(CuttingFamily family) {
    int tried = Seeds.of(4);
    List<Long> open = new ArrayList<>();
    for (long seed = 0; seed < tried; seed++) {
      CuttingProblem p = problem(family, seed, 12, 40);
      CuttingSolver.Result r = new CuttingSolver(STEPS).solve(p);
      Checker.check(p, r);
      if (!r.proved()) {
        open.add(seed);
      }
    }
    // In a campaign one of twenty may be left with a bound.
    assertTrue(open.size() * 20 < tried, family + " seeds " + open);
  }

  /** Forty-one to a hundred and twenty stones: the price within that of one blank. */
  @ParameterizedTest
  @EnumSource(CuttingFamily.class)
  void beyondFortyTheBoundIsWithinOneBlank(CuttingFamily family) {
    int tried = Seeds.of(1);
    List<Long> far = new ArrayList<>();
    for (long seed = 0; seed < tried; seed++) {
      CuttingProblem p = problem(family, seed, 41, 120);
      CuttingSolver.Result r = new CuttingSolver(STEPS).solve(p);
      Checker.check(p, r);
      Packing firstFit = new FirstFit(p, new Sequencer(p.nesting())).solve();
      assertTrue(r.packing().cost().compareTo(firstFit.cost()) <= 0, family + " seed " + seed);
      long blank = p.bins().stream().mapToLong(b -> b.cost().lead()).max().orElse(0);
      if (r.packing().cost().missing() > r.bound().missing()
          || r.packing().cost().lead() - r.bound().lead() > blank) {
        far.add(seed);
      }
    }
    // In a campaign one of ten may be further off; more where a hundred differ and may be turned.
    int among = family == CuttingFamily.TURNED ? 4 : 10;
    assertTrue(far.size() * among < tried, family + " seeds " + far);
  }

  @ParameterizedTest
  @EnumSource(CuttingFamily.class)
  void theSameAgain(CuttingFamily family) {
    CuttingProblem p = problem(family, 3, 12, 24);
    assertEquals(told(new CuttingSolver(STEPS).solve(p)), told(new CuttingSolver(STEPS).solve(p)));
  }

  /** The bounds by leans never say more than the shortest of all orders of a few parts. */
  @ParameterizedTest
  @EnumSource(CuttingFamily.class)
  void boundsByLeansHoldForEveryOrder(CuttingFamily family) {
    for (long seed = 0; seed < Seeds.of(20); seed++) {
      CuttingProblem p = problem(family, seed, 12, 24);
      Random r = new Random(seed);
      int[] counts = new int[p.demand().length];
      for (int k = 0; k < 5; k++) {
        counts[r.nextInt(counts.length)]++;
      }
      Sequencer q = new Sequencer(p.nesting());
      assertTrue(
          p.nesting().leastLength(counts) <= p.nesting().length(q.best(counts)),
          family + " seed " + seed);
    }
  }

  private static String told(CuttingSolver.Result r) {
    StringBuilder s = new StringBuilder(r.packing().cost() + " " + r.bound() + " " + r.steps());
    for (Packing.Pattern p : r.packing().patterns()) {
      s.append(' ').append(p.bin()).append(Arrays.toString(p.counts()));
    }
    return s.toString();
  }
}
