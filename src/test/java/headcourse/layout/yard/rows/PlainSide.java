package headcourse.layout.yard.rows;

/** A side of an upright head, for tests. */
record PlainSide(
    long start, long joint, long jamb, long clear, long bearingMin, long bearingMax, long target)
    implements RowSide {
  long firstEnd() {
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
  public boolean stands(int index, long inner, long outer, boolean last) {
    return last ? bearingOff(outer) >= 0 : outer + joint <= jamb - clear || outer >= jamb + clear;
  }

  @Override
  public long extent(int index, long inner, long outer, boolean last) {
    return outer - inner - joint;
  }

  @Override
  public boolean fanned() {
    return false;
  }

  @Override
  public int regularFrom() {
    return 1;
  }

  /** The same beyond another foot. */
  PlainSide from(long other) {
    return new PlainSide(other, joint, jamb, clear, bearingMin, bearingMax, target);
  }
}
