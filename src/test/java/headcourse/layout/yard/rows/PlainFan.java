package headcourse.layout.yard.rows;

/**
 * A side of a fan, for tests: what leans, leans out from a striking point so deep below the soffit
 * line that everything is {@code growth} times as far out on the top line.
 */
record PlainFan(
    long start,
    long joint,
    double growth,
    boolean onTop,
    long jamb,
    long clear,
    long first,
    long last,
    long target)
    implements RowSide {
  private long foot(double line) {
    return (long) Math.floor(line - joint / 2.0 + 0.5);
  }

  /** The same beyond another foot. */
  PlainFan from(long other) {
    return new PlainFan(other, joint, growth, onTop, jamb, clear, first, last, target);
  }

  /** Where a joint crosses the soffit line. */
  private long soffit(long foot) {
    return onTop ? foot((foot + joint / 2.0) / growth) : foot;
  }

  /** Where a joint crosses the top line. */
  private long top(long foot) {
    return onTop ? foot : foot((foot + joint / 2.0) * growth);
  }

  @Override
  public long lastEnd() {
    return last;
  }

  @Override
  public long bearingOff(long foot) {
    return foot < first || foot > last ? -1 : Math.abs(foot - target);
  }

  @Override
  public boolean stands(int index, long inner, long outer, boolean last) {
    long s = soffit(outer);
    return last ? bearingOff(outer) >= 0 : s + joint <= jamb - clear || s >= jamb + clear;
  }

  @Override
  public long extent(int index, long inner, long outer, boolean last) {
    long top = !last || onTop ? top(outer) : (long) Math.floor(outer * growth + 0.5);
    return top - soffit(inner) - joint;
  }

  @Override
  public boolean fanned() {
    return true;
  }

  @Override
  public int regularFrom() {
    return 1;
  }
}
