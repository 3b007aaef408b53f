package headcourse.stock.pile;

/** A side of an upright head, for tests. */
public record PlainSide(
    long start, long joint, long jamb, long clear, long bearingMin, long bearingMax, long target)
    implements PileSide {
  @Override
  public long firstEnd() {
    return jamb + Math.max(bearingMin, clear);
  }

  @Override
  public long lastEnd() {
    return jamb + bearingMax;
  }

  @Override
  public long bearingOff(long foot) {
    return foot < firstEnd() || foot > lastEnd() ? -1 : Math.abs(foot - jamb - target);
  }

  @Override
  public boolean jointStands(int index, long foot) {
    return foot + joint <= jamb - clear || foot >= jamb + clear;
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
  public long extra(int index) {
    return 0;
  }
}
