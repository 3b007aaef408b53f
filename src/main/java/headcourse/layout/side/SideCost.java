package headcourse.layout.side;

/**
 * What a side costs, exactly.
 *
 * @param shortfall what it wants of spare to land at the worst, pm
 * @param unfit how many stones fit no blank, over all openings of its kind
 * @param blanks how many blanks the stones are cut from, where that leads; otherwise 0
 * @param mean |mean width − target| times the number of stones, pm
 * @param bearing |bearing − target|, pm
 * @param count how many stones
 */
public record SideCost(
    long shortfall, long unfit, long blanks, long mean, long bearing, int count) {
  /** What so many stones up to an end cost; blanks are not counted. */
  public static SideCost of(
      FlatTerms terms, Lines lines, End end, int count, long shortfall, long unfit) {
    long widths = (end.foot() - lines.start() - count * terms.joint()) * terms.tick();
    return new SideCost(
        shortfall,
        unfit,
        0,
        Math.abs(widths - count * terms.widths().target()),
        Math.abs(end.bearing() - terms.bearing().target().picometres()),
        count);
  }

  /** The same, wanting more. */
  SideCost with(long other, long unfitting) {
    return new SideCost(other, unfitting, blanks, mean, bearing, count);
  }

  /** The same, cut from so many blanks. */
  SideCost withBlanks(long number) {
    return new SideCost(shortfall, unfit, number, mean, bearing, count);
  }

  int compareMean(SideCost o) {
    return Long.compare(Math.multiplyExact(mean, o.count), Math.multiplyExact(o.mean, count));
  }

  /** Whether it lands, then whether it can be cut. */
  int compareSound(SideCost o) {
    int c = Long.compare(shortfall, o.shortfall);
    return c != 0 ? c : Long.compare(unfit, o.unfit);
  }

  /** The order of {@code even} and {@code graded}. */
  public int compareDivided(SideCost o) {
    int c = compareSound(o);
    c = c != 0 ? c : Long.compare(blanks, o.blanks);
    c = c != 0 ? c : compareMean(o);
    c = c != 0 ? c : Long.compare(bearing, o.bearing);
    return c != 0 ? c : Integer.compare(count, o.count);
  }

  /** How far the widths are from the target in all, mm. */
  public double meanMm() {
    return (double) mean / count / 1e9;
  }

  double bearingMm() {
    return bearing / 1e9;
  }
}
