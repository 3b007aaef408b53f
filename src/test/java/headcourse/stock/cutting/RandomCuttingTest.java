package headcourse.stock.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random cutting plans: proved up to forty stones, within one blank beyond. */
class RandomCuttingTest {
  private static CuttingSolver.Result solved(CuttingProblem p, String what) {
    CuttingSolver.Result r = new CuttingSolver(500_000).solve(p);
    Checker.check(p, r);
    assertEquals(0, r.packing().cost().missing(), what);
    return r;
  }

  @Test
  void soldiersUpToFortyAreProved() {
    for (long seed = 0; seed < 40; seed++) {
      Random r = new Random(seed);
      CuttingProblem p = RandomCutting.soldiers(r, 5 + r.nextInt(36), 1 + r.nextInt(3));
      assertTrue(solved(p, "seed " + seed).proved(), "seed " + seed);
    }
  }

  @Test
  void smallFansAreProved() {
    for (long seed = 0; seed < 15; seed++) {
      Random r = new Random(seed);
      CuttingProblem p = RandomCutting.fan(r, 2 + r.nextInt(6), 1, seed % 5 == 0);
      assertTrue(solved(p, "seed " + seed).proved(), "seed " + seed);
    }
  }

  /** Twenty to forty stones of a jack head, each of its own rake. */
  @Test
  void fansUpToFortyAreProved() {
    for (long seed = 0; seed < 30; seed++) {
      Random r = new Random(seed);
      CuttingProblem p = RandomCutting.fan(r, 10 + r.nextInt(11), 1, seed % 5 == 0);
      assertTrue(solved(p, "seed " + seed).proved(), "seed " + seed);
    }
  }

  /** The bound by leans never says more than the shortest of all orders of a few parts. */
  @Test
  void boundByLeansHoldsForEveryOrder() {
    for (long seed = 0; seed < 40; seed++) {
      Random r = new Random(seed);
      Nesting n = RandomCutting.fan(r, 5, 1, seed % 2 == 0).nesting();
      int[] counts = new int[n.types];
      for (int k = 0; k < 5; k++) {
        counts[r.nextInt(counts.length)]++;
      }
      Sequencer q = new Sequencer(n);
      assertTrue(n.leastLength(counts) <= n.length(q.best(counts)), "seed " + seed);
    }
  }

  @Test
  void beyondFortyTheBoundIsWithinOneBlank() {
    for (long seed = 0; seed < 25; seed++) {
      Random r = new Random(seed);
      CuttingProblem p = RandomCutting.soldiers(r, 41 + r.nextInt(500), 1);
      CuttingSolver.Result result = solved(p, "seed " + seed);
      assertTrue(result.packing().cost().lead() - result.bound().lead() <= 1, "seed " + seed);
    }
  }

  /** Yards that heuristics alone once took minutes for: every loop counts, from the first on. */
  @Test
  void stepsAreCountedFromTheFirstLine() {
    long limit = 60_000;
    for (long seed = 0; seed < 6; seed++) {
      Random r = new Random(seed);
      CuttingProblem p =
          seed % 2 == 0 ? RandomCutting.mixed(r, 60) : RandomCutting.longBlanks(r, 16);
      CuttingSolver.Result result = new CuttingSolver(limit).solve(p);
      Checker.check(p, result);
      assertTrue(result.steps() < limit * 1.2, "seed " + seed + ": " + result.steps());
    }
  }

  /** Never worse than first fit, which it starts from, and the same again. */
  @Test
  void notWorseThanFirstFitAndTheSameAgain() {
    for (long seed = 0; seed < 12; seed++) {
      CuttingProblem p = RandomCutting.soldiers(new Random(seed), 24, 2);
      Packing firstFit = new FirstFit(p, new Sequencer(p.nesting())).solve();
      CuttingSolver.Result one = new CuttingSolver(100_000).solve(p);
      CuttingSolver.Result two = new CuttingSolver(100_000).solve(p);
      assertTrue(one.packing().cost().compareTo(firstFit.cost()) <= 0, "seed " + seed);
      assertEquals(told(one), told(two), "seed " + seed);
    }
  }

  private static String told(CuttingSolver.Result r) {
    StringBuilder s = new StringBuilder(r.packing().cost() + " " + r.bound() + " " + r.steps());
    for (Packing.Pattern p : r.packing().patterns()) {
      s.append(' ').append(p.bin()).append(java.util.Arrays.toString(p.counts()));
    }
    return s.toString();
  }
}
