package headcourse.layout.side;

/**
 * Where a joint must stand if so many stones are to lead from it to an end, by widths and the jamb
 * alone: an interval this side of the jamb line and one beyond it. What lies outside can't work;
 * what lies inside may still not.
 */
final class Reach {
  private static final long NONE_LOW = Long.MAX_VALUE / 2;
  private static final long NONE_HIGH = Long.MIN_VALUE / 2;

  private final long[] inLow;
  private final long[] inHigh;
  private final long[] outLow;
  private final long[] outHigh;

  Reach(FlatTerms terms, SideCheck check, Lines lines, End end, int count) {
    inLow = new long[count + 1];
    inHigh = new long[count + 1];
    outLow = new long[count + 1];
    outHigh = new long[count + 1];
    // A tick wider than it need be, for what rounding between the two lines may shift.
    long before = (long) Math.ceil(lines.dividing(check.before() - terms.joint())) + 1;
    long after = (long) Math.floor(lines.dividing(check.after())) - 1;
    if (lines.regularFrom() == 1) {
      // No joint keeps clear of more than those farther out, so the first foot bounds them all.
      while (before > lines.start() && !check.inside(1, before)) {
        before--;
      }
      while (after < end.foot() && !check.beyond(1, after)) {
        after++;
      }
    }
    inLow[0] = NONE_LOW;
    inHigh[0] = NONE_HIGH;
    outLow[0] = end.foot();
    outHigh[0] = end.foot();
    for (int k = 1; k <= count; k++) {
      long low = Math.min(inLow[k - 1], outLow[k - 1]) - terms.joint() - terms.widths().max();
      long high = Math.max(inHigh[k - 1], outHigh[k - 1]) - terms.joint() - terms.widths().min();
      inLow[k] = low;
      inHigh[k] = Math.min(high, before);
      if (inLow[k] > inHigh[k]) {
        inLow[k] = NONE_LOW;
        inHigh[k] = NONE_HIGH;
      }
      outLow[k] = Math.max(outLow[k - 1] - terms.joint() - terms.widths().max(), after);
      outHigh[k] = outHigh[k - 1] - terms.joint() - terms.widths().min();
      if (outLow[k] > outHigh[k]) {
        outLow[k] = NONE_LOW;
        outHigh[k] = NONE_HIGH;
      }
    }
  }

  /** Whether a joint may stand at a foot with so many stones to come. */
  boolean may(int left, long foot) {
    return foot >= inLow[left] && foot <= inHigh[left]
        || foot >= outLow[left] && foot <= outHigh[left];
  }
}
