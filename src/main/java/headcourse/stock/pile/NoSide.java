package headcourse.stock.pile;

/** A side without stones, so that the other can be looked at by itself. */
record NoSide() implements PileSide {
  @Override
  public long start() {
    return 0;
  }

  @Override
  public long joint() {
    return 0;
  }

  @Override
  public long firstEnd() {
    return 0;
  }

  @Override
  public long lastEnd() {
    return 0;
  }

  @Override
  public long bearingOff(long foot) {
    return foot == 0 ? 0 : -1;
  }

  @Override
  public boolean jointStands(int index, long foot) {
    return true;
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
