package headcourse.stock.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.stock.cutting.CuttingProblem.Bin;
import headcourse.testing.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What is known of patterns of one blank, against all orders of a few parts: of every family, so
 * with parts that may be turned and with mixed heights.
 */
class PatternBoundsTest {
  private static CuttingProblem problem(CuttingFamily family, Random r, int most) {
    return family.make(r, 4 + r.nextInt(most - 3));
  }

  private static int[] some(CuttingProblem p, Random r, int parts) {
    int[] counts = new int[p.demand().length];
    for (int k = 0; k < parts; k++) {
      counts[r.nextInt(counts.length)]++;
    }
    return counts;
  }

  /** No bound says more than the shortest of all orders, and the search for it finds just that. */
  @ParameterizedTest
  @EnumSource(CuttingFamily.class)
  void lengthsAreThoseOfTheShortestOrder(CuttingFamily family) {
    for (long seed = 0; seed < Seeds.of(40); seed++) {
      String what = family + " seed " + seed;
      Random r = new Random(7000 * family.ordinal() + seed);
      CuttingProblem p = problem(family, r, 30);
      int[] counts = some(p, r, 2 + r.nextInt(4));
      long shortest = AllWays.shortest(p.nesting(), counts);
      assertTrue(p.nesting().leastLength(counts) <= shortest, what);
      Sequencer q = new Sequencer(p.nesting());
      assertEquals(shortest, p.nesting().length(q.best(counts)), what);
      assertTrue(q.fits(counts, shortest), what);
      if (!p.nesting().square) {
        assertFalse(q.mayFit(counts, shortest - 1), what);
        assertFalse(new Sequencer(p.nesting()).mayFit(counts, shortest - 1), what);
      }
    }
  }

  /** Beside some of the parts there is room for the inner widths of the others, in all measures. */
  @ParameterizedTest
  @EnumSource(CuttingFamily.class)
  void innerWidthsGoBesideAnyOfTheParts(CuttingFamily family) {
    for (long seed = 0; seed < Seeds.of(40); seed++) {
      Random r = new Random(8000 * family.ordinal() + seed);
      CuttingProblem p = problem(family, r, 30);
      int[] counts = some(p, r, 5);
      long shortest = AllWays.shortest(p.nesting(), counts);
      Bin bin = new Bin(0, shortest, 1, new Cost(0, 1, 1), p.bins().get(0).takes());
      InnerWidths widths = new InnerWidths(p.nesting());
      long[] rooms = new long[widths.measures()];
      for (int some = 0; some < 1 << counts.length && some < 4096; some++) {
        int[] laid = counts.clone();
        for (int t = 0; t < laid.length; t++) {
          laid[t] = (some >> t & 1) != 0 || r.nextBoolean() ? counts[t] : 0;
        }
        widths.rooms(bin, Nesting.present(laid), laid, rooms);
        for (int k = 0; k < rooms.length; k++) {
          long others = 0;
          for (int t = 0; t < laid.length; t++) {
            others += (counts[t] - laid[t]) * widths.inner(k, t);
          }
          assertTrue(others <= rooms[k], family + " seed " + seed + " measure " + k);
        }
      }
    }
  }

  /** The pattern found is worth most of all, with pattern rows and without. */
  @ParameterizedTest
  @EnumSource(CuttingFamily.class)
  void thePatternOfMostWorthIsFound(CuttingFamily family) {
    for (long seed = 0; seed < Seeds.of(25); seed++) {
      String what = family + " seed " + seed;
      Random r = new Random(9000 * family.ordinal() + seed);
      CuttingProblem p = problem(family, r, 6);
      int n = p.demand().length;
      long[] worth = new long[n];
      Arrays.setAll(worth, t -> r.nextInt(5) == 0 ? 0 : 1000 + r.nextInt(4000));
      List<PatternRow> rows = new ArrayList<>();
      List<Long> duals = new ArrayList<>();
      for (int k = r.nextInt(3); k > 0; k--) {
        int[] load = new int[n];
        load[r.nextInt(n)]++;
        load[r.nextInt(n)]++;
        boolean least = r.nextBoolean();
        rows.add(PatternRow.holding(-1, load, least, r.nextInt(2)));
        duals.add((least ? 1L : -1L) * r.nextInt(3000));
      }
      long[] of = duals.stream().mapToLong(d -> d).toArray();
      for (int b = 0; b < p.bins().size(); b++) {
        long most = most(p, b, worth, rows, of);
        Sequencer q = new Sequencer(p.nesting());
        Pricing.Priced priced =
            new Pricing(p, q, rows).price(b, worth, of, 0, false, StepBudget.endless());
        assertTrue(priced.whole(), what);
        assertEquals(most, priced.bound(), what);
        if (most > 0) {
          assertEquals(most, value(b, priced.found().get(0), worth, rows, of), what);
        }
      }
    }
  }

  private static long value(
      int b, int[] counts, long[] worth, List<PatternRow> rows, long[] duals) {
    long sum = 0;
    for (int t = 0; t < counts.length; t++) {
      sum += counts[t] * worth[t];
    }
    for (int i = 0; i < duals.length; i++) {
      sum += duals[i] * rows.get(i).of(b, counts);
    }
    return sum;
  }

  private static long most(
      CuttingProblem p, int b, long[] worth, List<PatternRow> rows, long[] duals) {
    long most = 0;
    int[] counts = new int[worth.length];
    while (next(counts, p.demand())) {
      boolean useful = true;
      for (int t = 0; t < counts.length; t++) {
        useful &= counts[t] == 0 || p.bins().get(b).takes()[t];
      }
      for (PatternRow row : rows) {
        useful &= !row.forbids(b, counts);
      }
      if (useful) {
        long value = value(b, counts, worth, rows, duals);
        if (value > most && AllWays.shortest(p.nesting(), counts) <= p.bins().get(b).usable()) {
          most = value;
        }
      }
    }
    return most;
  }

  private static boolean next(int[] counts, int[] demand) {
    for (int t = 0; t < counts.length; t++) {
      if (counts[t] < demand[t]) {
        counts[t]++;
        return true;
      }
      counts[t] = 0;
    }
    return false;
  }
}
