package headcourse.stock;

/**
 * A side whose last stone is sawn down by so much after whole pieces were laid out beyond its end.
 *
 * @param side the side as it is
 * @param off how much is sawn off
 * @param min least width of a stone
 */
record SawnEnd(PileSide side, long off, long min) implements PileSide {
  @Override
  public long start() {
    return side.start();
  }

  @Override
  public long joint() {
    return side.joint();
  }

  @Override
  public long firstEnd() {
    return side.firstEnd() + off;
  }

  @Override
  public long lastEnd() {
    return side.lastEnd() + off;
  }

  @Override
  public long bearingOff(long foot) {
    return side.bearingOff(foot - off);
  }

  @Override
  public boolean jointStands(int index, long foot) {
    return side.jointStands(index, foot);
  }

  @Override
  public boolean stoneFits(int index, long inner, long outer) {
    return side.stoneFits(index, inner, outer);
  }

  @Override
  public boolean endFits(int index, long inner, long end) {
    return end - off - inner - side.joint() >= min && side.endFits(index, inner, end - off);
  }

  @Override
  public long extra(int index) {
    return side.extra(index);
  }
}
