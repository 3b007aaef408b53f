package headcourse.layout.side;

/**
 * The joint lines of what is left of a side beyond stones that are there already. Its start is a
 * tick; where the last of them really ends may be up to half a tick off, which the first stone
 * chosen takes up, so that every joint from there on lies on the grid again.
 *
 * @param all the lines of the whole side
 * @param count how many stones are there
 * @param tick one tick, pm
 * @param soffit where they end on the soffit line, pm
 * @param top where they end on the top line, pm
 * @param onTop whether widths are counted on the top line
 * @param previous width of the last of them on the dividing line, ticks; NaN for none
 * @param measured how many of them, and of the key, were measured
 */
public record RestLines(
    Lines all,
    int count,
    long tick,
    long soffit,
    long top,
    boolean onTop,
    double previous,
    int measured)
    implements Lines {
  private long nearest(long pm) {
    return Math.floorDiv(2 * pm + tick, 2 * tick);
  }

  @Override
  public int there() {
    return count;
  }

  @Override
  public long start() {
    return onTop ? startTop() : startSoffit();
  }

  @Override
  public long startSoffit() {
    return nearest(soffit);
  }

  @Override
  public long startTop() {
    return nearest(top);
  }

  @Override
  public double trueSoffit() {
    return (double) soffit / tick;
  }

  @Override
  public double trueTop() {
    return (double) top / tick;
  }

  @Override
  public double trueStart() {
    return onTop ? trueTop() : trueSoffit();
  }

  @Override
  public long soffit(int index, long foot) {
    return all.soffit(index + count, foot);
  }

  @Override
  public long top(int index, long foot) {
    return all.top(index + count, foot);
  }

  @Override
  public double dividing(double at) {
    return all.dividing(at);
  }

  @Override
  public int regularFrom() {
    return Math.max(1, all.regularFrom() - count);
  }

  @Override
  public double striking() {
    return all.striking();
  }
}
