package headcourse.layout.flat;

/**
 * What a side costs, exactly.
 *
 * @param mean |mean width − target| times the number of stones, pm
 * @param bearing |bearing − target|, pm
 * @param count how many stones
 */
record SideCost(long mean, long bearing, int count) {
  static SideCost of(FlatTerms terms, Lines lines, End end, int count) {
    long widths = (end.foot() - lines.start() - count * terms.joint()) * terms.tick();
    return new SideCost(
        Math.abs(widths - count * terms.target()),
        Math.abs(end.bearing() - terms.bearing().target().picometres()),
        count);
  }

  int compareMean(SideCost o) {
    return Long.compare(Math.multiplyExact(mean, o.count), Math.multiplyExact(o.mean, count));
  }

  /** The order of {@code even} and {@code graded}. */
  int compareDivided(SideCost o) {
    int c = compareMean(o);
    c = c != 0 ? c : Long.compare(bearing, o.bearing);
    return c != 0 ? c : Integer.compare(count, o.count);
  }

  double meanMm() {
    return (double) mean / count / 1e9;
  }

  double bearingMm() {
    return bearing / 1e9;
  }
}
