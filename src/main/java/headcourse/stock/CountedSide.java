package headcourse.stock;

import headcourse.stock.pile.PileSide;

/**
 * A side on which just so many stones stand, where the other side of its head has another number.
 *
 * @param side the side
 * @param each how many stones
 */
record CountedSide(PileSide side, int each) implements PileSide {
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
    return side.firstEnd();
  }

  @Override
  public long lastEnd() {
    return side.lastEnd();
  }

  @Override
  public long bearingOff(long foot) {
    return side.bearingOff(foot);
  }

  @Override
  public boolean jointStands(int index, long foot) {
    return index < each && side.jointStands(index, foot);
  }

  @Override
  public boolean stoneFits(int index, long inner, long outer) {
    return side.stoneFits(index, inner, outer);
  }

  @Override
  public boolean endFits(int index, long inner, long end) {
    return index == each && side.endFits(index, inner, end);
  }

  @Override
  public long extra(int index) {
    return side.extra(index);
  }
}
