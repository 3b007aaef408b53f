package headcourse.layout.flat;

/** The hard constraints on one side, but for those that decide where it may end. */
public final class SideCheck {
  private final FlatTerms terms;
  private final Lines lines;
  private final boolean fan;
  private final long before;
  private final long after;

  SideCheck(FlatTerms terms, Lines lines, boolean fan) {
    this.terms = terms;
    this.lines = lines;
    this.fan = fan;
    long clear = terms.opening().head().clear().picometres();
    // A joint runs from its foot to its foot + joint; both edges keep clear of the jamb line.
    before = Math.floorDiv(terms.half() - clear, terms.tick()) - terms.joint();
    after = -Math.floorDiv(-terms.half() - clear, terms.tick());
  }

  /** The farthest foot of a joint this side of the jamb line. */
  long before() {
    return before;
  }

  /** The nearest foot of a joint beyond the jamb line. */
  long after() {
    return after;
  }

  /** Whether the key leaves the jamb line clear. */
  public boolean keyStands() {
    return Math.max(lines.startSoffit(), fan ? Long.MIN_VALUE : lines.startTop()) <= before;
  }

  /** Whether joint {@code index} may stand at a foot: clear of the jamb line at both its ends. */
  public boolean jointStands(int index, long foot) {
    long s = lines.soffit(index, foot);
    long t = fan ? s : lines.top(index, foot);
    return Math.max(s, t) <= before || Math.min(s, t) >= after;
  }

  /** Whether stone {@code index} between two joints has a width allowed and a blank wide enough. */
  public boolean stoneFits(int index, long inner, long outer) {
    return fits(index, inner, outer, lines.soffit(index, outer), lines.top(index, outer));
  }

  /** Whether stone {@code index} between a joint and an end does. */
  public boolean endFits(int index, long inner, End end) {
    return fits(index, inner, end.foot(), end.soffit(), end.top());
  }

  private boolean fits(int index, long inner, long outer, long soffit, long top) {
    long width = outer - inner - terms.joint();
    if (width < terms.min() || width > terms.max()) {
      return false;
    }
    long s0 = index == 1 ? lines.startSoffit() : lines.soffit(index - 1, inner);
    long t0 = index == 1 ? lines.startTop() : lines.top(index - 1, inner);
    return soffit - s0 > terms.joint()
        && top - t0 > terms.joint()
        && Math.max(soffit, top) - Math.min(s0, t0) - terms.joint() <= terms.usable();
  }
}
