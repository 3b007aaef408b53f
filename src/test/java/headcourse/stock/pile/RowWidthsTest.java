package headcourse.stock.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Widths chosen for stones in given orders, against all widths tried one by one. */
class RowWidthsTest {
  private final List<long[]> all = new ArrayList<>();

  @Test
  void widthsOfARowCostLeast() {
    for (long seed = 0; seed < Seeds.of(300); seed++) {
      Random r = new Random(seed);
      int n = 1 + r.nextInt(4);
      long jump = r.nextInt(3) == 0 ? Long.MAX_VALUE : 1 + r.nextInt(3);
      long[][] limits = limits(r, n, jump);
      long sum = Arrays.stream(limits[1]).sum() - r.nextInt(3 * n);
      long[] want = r.longs(n, 0, 12).toArray();
      WidthChoice.Price price = (i, w) -> (i + 1) * Math.abs(w - want[i]);
      long[] got = new WidthChoice(limits[0], limits[1], jump, sum).best(price);
      long least = Long.MAX_VALUE;
      for (long[] w : rows(limits, jump, sum)) {
        least = Math.min(least, cost(w, price));
      }
      if (least == Long.MAX_VALUE) {
        assertNull(got, "seed " + seed);
      } else {
        assertEquals(least, cost(got, price), "seed " + seed);
        assertTrue(rows(limits, jump, sum).stream().anyMatch(w -> Arrays.equals(w, got)));
      }
    }
  }

  @Test
  void theBoundOfTwoRowsHolds() {
    int settled = 0;
    int some = 0;
    for (long seed = 0; seed < Seeds.of(300); seed++) {
      Random r = new Random(seed);
      long jump = 1 + r.nextInt(4);
      PlainSide side = new PlainSide(0, 0, 20, 2, 2, 9, 4);
      Pile.Head head = new Pile.Head(1, true, 0, 1, 20, jump, side, side);
      int[] n = {1 + r.nextInt(3), 1 + r.nextInt(3)};
      RowPair pair =
          new RowPair(
              head, 0, new RowShape(head, side, n[0], 0), new RowShape(head, side, n[1], 0));
      long[][][] limits = {limits(r, n[0], jump), limits(r, n[1], jump)};
      long[] sum = new long[2];
      for (int s = 0; s < 2; s++) {
        sum[s] = Arrays.stream(limits[s][1]).sum() - r.nextInt(2 * n[s]);
      }
      PairWidths widths =
          new PairWidths(
              pair,
              new long[][] {limits[0][0], limits[1][0]},
              new long[][] {limits[0][1], limits[1][1]},
              sum);
      widths.run();
      long least = Long.MAX_VALUE;
      for (long[] l : rows(limits[0], jump, sum[0])) {
        for (long[] q : rows(limits[1], jump, sum[1])) {
          least = Math.min(least, pair.imbalance(l, q));
        }
      }
      assertTrue(widths.bound() <= least, "seed " + seed);
      assertEquals(least == Long.MAX_VALUE, widths.best() == null, "seed " + seed);
      if (widths.best() != null) {
        long found = pair.imbalance(widths.best()[0], widths.best()[1]);
        assertTrue(found >= least, "seed " + seed);
        some++;
        settled += found == widths.bound() ? 1 : 0;
      }
    }
    assertTrue(some > 50 && settled > some * 3 / 4, settled + " of " + some);
  }

  private static long cost(long[] w, WidthChoice.Price price) {
    long sum = 0;
    for (int i = 0; i < w.length; i++) {
      sum += price.of(i, w[i]);
    }
    return sum;
  }

  /** Least and greatest widths; the greatest each within the jump of the next. */
  private static long[][] limits(Random r, int n, long jump) {
    long[] high = new long[n];
    long[] low = new long[n];
    for (int i = 0; i < n; i++) {
      long from = i == 0 || jump > 9 ? 4 + r.nextInt(6) : high[i - 1] - jump;
      high[i] = i == 0 || jump > 9 ? from : Math.max(3, from + r.nextInt((int) (2 * jump + 1)));
      low[i] = Math.max(1, high[i] - r.nextInt(5));
    }
    return new long[][] {low, high};
  }

  private List<long[]> rows(long[][] limits, long jump, long sum) {
    all.clear();
    put(limits, jump, sum, 0, new long[limits[0].length]);
    return new ArrayList<>(all);
  }

  private void put(long[][] limits, long jump, long left, int i, long[] w) {
    if (i == w.length) {
      if (left == 0) {
        all.add(w.clone());
      }
      return;
    }
    for (w[i] = limits[0][i]; w[i] <= limits[1][i]; w[i]++) {
      if (i == 0 || Math.abs(w[i] - w[i - 1]) <= jump) {
        long now = w[i];
        put(limits, jump, left - now, i + 1, w);
        w[i] = now;
      }
    }
  }
}
