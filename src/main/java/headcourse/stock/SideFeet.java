package headcourse.stock;

/**
 * Where the joints of a side may stand, stone by stone, if its stones were of any width that is
 * allowed: what no pile can do is known without it.
 */
final class SideFeet {
  private static final long TOO_MUCH = 100_000_000;

  /** By number of stones and end: whether some row comes out there; null where it is not known. */
  private final boolean[][] ends;

  private final long first;

  SideFeet(Pile.Head head, PileSide side, int most, long widest) {
    long run = side.lastEnd() - side.start();
    long max = Math.min(head.max(), widest);
    first = side.firstEnd();
    int length = (int) Math.max(0, side.lastEnd() - first + 1);
    if (run <= 0 || (double) most * run * Math.max(1, max - head.min() + 1) > TOO_MUCH) {
      ends = null;
      return;
    }
    ends = new boolean[most + 1][length];
    boolean[] at = new boolean[(int) run + 1];
    at[0] = true;
    for (int n = 1; n <= most; n++) {
      boolean[] next = new boolean[at.length];
      for (int i = 0; i < at.length; i++) {
        for (long w = head.min(); at[i] && w <= max; w++) {
          long inner = side.start() + i;
          long outer = inner + side.joint() + w;
          if (outer > side.lastEnd()) {
            break;
          }
          if (outer >= first && side.bearingOff(outer) >= 0 && side.endFits(n, inner, outer)) {
            ends[n][(int) (outer - first)] = true;
          }
          int to = (int) (outer - side.start());
          next[to] |= side.jointStands(n, outer) && side.stoneFits(n, inner, outer);
        }
      }
      at = next;
    }
  }

  /** Whether so many stones may end there. */
  boolean comesOut(int n, long end) {
    return ends == null || ends[n][(int) (end - first)];
  }
}
