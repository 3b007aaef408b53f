package headcourse.choose;

/**
 * What decides whether one head outdoes another: landing, nearness to the target width, bond, and
 * blanks. A head is outdone by one that is no worse in any of them and better in one.
 *
 * @param shortfall what it wants of spare to land, pm
 * @param off how far its stones are off the target width, together, pm
 * @param stones how many share that
 * @param lap least distance of a joint from a jamb line, pm
 */
record Merit(long shortfall, long off, int stones, long lap) {
  static Merit of(Candidate c) {
    return new Merit(
        c.arrangement().shortfall().picometres(),
        c.off(),
        c.arrangement().stones(),
        c.arrangement().lap().picometres());
  }

  /** Compares how far the mean widths are off the target. */
  int compareOff(Merit o) {
    return Long.compare(Math.multiplyExact(off, o.stones), Math.multiplyExact(o.off, stones));
  }

  /** Whether it is no worse, blanks apart. */
  boolean noWorse(Merit o) {
    return shortfall <= o.shortfall && lap >= o.lap && compareOff(o) <= 0;
  }

  /** Whether it is better in one of them, blanks apart. */
  boolean betterInOne(Merit o) {
    return shortfall < o.shortfall || lap > o.lap || compareOff(o) < 0;
  }

  /** An order in which nothing comes before what is no worse than it. */
  static int order(Merit a, Merit b) {
    int by = Long.compare(a.shortfall, b.shortfall);
    by = by != 0 ? by : a.compareOff(b);
    return by != 0 ? by : Long.compare(b.lap, a.lap);
  }
}
