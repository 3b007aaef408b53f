package headcourse.stock.pile;

/** Tables of the pieces that do not depend on how many stones a head has. */
final class SweepTables {
  private final CoverTable[][] side;
  private final CoverTable all;
  private final PairGaps[] gaps;

  SweepTables(Pile pile, PileTypes types) {
    int heads = pile.heads().size();
    side = new CoverTable[heads][2];
    gaps = new PairGaps[heads];
    long[] most = new long[types.size()];
    int stones = 0;
    long reach = 0;
    long range = 0;
    for (int h = 0; h < heads; h++) {
      Pile.Head head = pile.heads().get(h);
      long[] covers = covers(head, types, h);
      int both = 0;
      for (int t = 0; t < most.length; t++) {
        most[t] = Math.max(most[t], covers[t]);
      }
      for (int s = 0; s < 2; s++) {
        PileSide of = head.side(s);
        int n = most(head, of);
        long far = reach(of, n);
        long ends = of.lastEnd() - of.firstEnd();
        both += n;
        stones += head.copies() * n;
        reach += head.copies() * far;
        range += head.copies() * ends;
        side[h][s] =
            s == 1 && of.equals(head.left())
                ? side[h][0]
                : new CoverTable(types.usable, covers, types.count, n, far, ends);
      }
      int[] count = types.count.clone();
      long[] widths = new long[covers.length];
      for (int t = 0; t < count.length; t++) {
        count[t] = covers[t] == 0 ? 0 : count[t];
        widths[t] = Math.min(types.usable[t], head.max() + types.extra(h));
      }
      gaps[h] = new PairGaps(widths, count, both);
    }
    all = new CoverTable(types.usable, most, types.count, stones, reach, range);
  }

  /** The greatest number of stones that a side holds. */
  static int most(Pile.Head head, PileSide side) {
    long run = side.lastEnd() - side.start();
    int top = (int) Math.max(0, run / (head.min() + side.joint()));
    return head.eachSide() > 0 ? Math.min(top, head.eachSide()) : top;
  }

  private static long reach(PileSide side, int most) {
    long sum = Math.max(0, side.lastEnd() - side.start());
    for (int i = 1; i <= most; i++) {
      sum += side.extra(i);
    }
    return sum;
  }

  private static long[] covers(Pile.Head head, PileTypes types, int h) {
    long[] out = new long[types.size()];
    for (int t = 0; t < out.length; t++) {
      long c = Math.min(types.usable[t], head.max() + types.extra(h));
      out[t] = types.fits.get(t).get(h) && c >= head.min() ? c : 0;
    }
    return out;
  }

  CoverTable side(int h, int s) {
    return side[h][s];
  }

  CoverTable all() {
    return all;
  }

  PairGaps gaps(int h) {
    return gaps[h];
  }
}
