package headcourse.stock.cutting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Holds a packing against its problem, apart from the solver's own book-keeping. */
final class Checker {
  private Checker() {}

  static void check(CuttingProblem p, CuttingSolver.Result r) {
    int[] got = r.packing().missing().clone();
    int[] used = new int[p.bins().size()];
    for (Packing.Pattern pattern : r.packing().patterns()) {
      used[pattern.bin()]++;
      int[] order = r.sequencer().best(pattern.counts());
      long[] at = p.nesting().starts(order);
      for (int i = 0; i < at.length; i++) {
        int node = order[i];
        got[p.nesting().typeOf[node]]++;
        assertTrue(p.bins().get(pattern.bin()).takes()[p.nesting().typeOf[node]]);
        assertTrue(at[i] + p.nesting().extent[node] <= p.bins().get(pattern.bin()).usable());
        for (int j = 0; j < i; j++) {
          assertTrue(at[i] - at[j] >= p.nesting().distance[order[j]][node]);
        }
      }
    }
    assertArrayEquals(p.demand(), got);
    for (int b = 0; b < used.length; b++) {
      assertTrue(used[b] <= p.bins().get(b).count());
    }
    assertTrue(r.bound().compareTo(r.packing().cost()) <= 0);
    if (r.proved()) {
      assertTrue(r.bound().compareTo(r.packing().cost()) == 0);
    }
  }
}
