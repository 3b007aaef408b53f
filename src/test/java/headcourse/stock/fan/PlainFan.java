package headcourse.stock.fan;

import headcourse.stock.pile.PileSide;

/**
 * A side of a fan, for tests: what leans, leans out from a striking point so deep below the soffit
 * line that everything is {@code growth} times as far out on the top line.
 */
public record PlainFan(
    long start,
    long joint,
    double growth,
    boolean onTop,
    long jamb,
    long clear,
    long first,
    long last,
    long target)
    implements PileSide {
  private long foot(double line) {
    return (long) Math.floor(line - joint / 2.0 + 0.5);
  }

  /** The same beyond another foot. */
  public PlainFan from(long other) {
    return new PlainFan(other, joint, growth, onTop, jamb, clear, first, last, target);
  }

  /** Where a joint crosses the soffit line. */
  long soffit(long foot) {
    return onTop ? foot((foot + joint / 2.0) / growth) : foot;
  }

  /** Where a joint crosses the top line. */
  long top(long foot) {
    return onTop ? foot : foot((foot + joint / 2.0) * growth);
  }

  @Override
  public long firstEnd() {
    return first;
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
  public boolean jointStands(int index, long foot) {
    long s = soffit(foot);
    return s + joint <= jamb - clear || s >= jamb + clear;
  }

  @Override
  public boolean stoneFits(int index, long inner, long outer) {
    return true;
  }

  @Override
  public boolean endFits(int index, long inner, long end) {
    return true;
  }

  @Override
  public boolean fanned() {
    return true;
  }

  @Override
  public long extra(int index) {
    return 0;
  }

  @Override
  public long extent(int index, long inner, long outer, boolean end) {
    long top = !end || onTop ? top(outer) : (long) Math.floor(outer * growth + 0.5);
    return top - soffit(inner) - joint;
  }
}
