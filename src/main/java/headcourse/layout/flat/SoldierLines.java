package headcourse.layout.flat;

import headcourse.layout.side.Lines;
import java.util.Arrays;

/**
 * Plumb joints, but for the first few, over which the key's rake dies out.
 *
 * @param startSoffit half key on the soffit line
 * @param startTop half key on the top line
 * @param offsets how far each of the first joints leans out over the height; the first is joint 1
 */
record SoldierLines(long startSoffit, long startTop, long[] offsets) implements Lines {
  /**
   * The rake of joint {@code i} is {@code ρ(1 − i/ease)}, ρ from the key's rounded feet; each
   * joint's lean over the height is rounded to a tick.
   */
  static SoldierLines of(long startSoffit, long startTop, long height, int ease) {
    long[] offsets = new long[Math.max(0, ease - 1)];
    double rake = Math.atan2(startTop - startSoffit, height);
    for (int i = 1; i < ease; i++) {
      double lean = height * Math.tan(rake * (1 - (double) i / ease));
      long size = Math.round(Math.abs(lean));
      offsets[i - 1] = lean < 0 ? -size : size;
    }
    return new SoldierLines(startSoffit, startTop, offsets);
  }

  @Override
  public long start() {
    return startSoffit;
  }

  @Override
  public long soffit(int index, long foot) {
    return foot;
  }

  @Override
  public long top(int index, long foot) {
    return index <= offsets.length ? foot + offsets[index - 1] : foot;
  }

  @Override
  public double dividing(double soffit) {
    return soffit;
  }

  @Override
  public int regularFrom() {
    return offsets.length + 1;
  }

  @Override
  public double striking() {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SoldierLines o
        && startSoffit == o.startSoffit
        && startTop == o.startTop
        && Arrays.equals(offsets, o.offsets);
  }

  @Override
  public int hashCode() {
    return Long.hashCode(31 * startSoffit + startTop);
  }
}
