package headcourse.layout.side;

import headcourse.job.HeadSpec;

/** The hard constraints on one side, but for those that decide where it may end. */
public final class SideCheck {
  /** What arithmetic leaves of nothing, ticks. */
  private static final double NOTHING = 1e-9;

  /** Whatever a joint wants of spare. */
  static final long ANY = Long.MAX_VALUE;

  private final FlatTerms terms;
  private final Lines lines;
  private final boolean fan;
  private final double before;
  private final double beyond;
  private final long after;
  private final Spare spare;
  private final long most;

  /** Any number of stones. */
  public SideCheck(FlatTerms terms, Lines lines, boolean fan) {
    this(terms, lines, fan, ANY);
  }

  /** With joints that may want no more than so much spare, pm. */
  public SideCheck(FlatTerms terms, Lines lines, boolean fan, long most) {
    this.spare = new Spare(terms, lines, fan);
    this.most = most;
    this.terms = terms;
    this.lines = lines;
    this.fan = fan;
    long clear = terms.head().clear().picometres();
    before = (double) (terms.near() - clear) / terms.tick();
    beyond = (double) (terms.far() + clear) / terms.tick();
    after = -Math.floorDiv(-terms.far() - clear, terms.tick());
  }

  /** The farthest tick this side of the jamb line that is clear of it. */
  public long before() {
    return (long) Math.floor(before);
  }

  /** The nearest tick beyond the jamb line that is clear of it. */
  public long after() {
    return after;
  }

  /** Whether the key leaves the jamb line clear. */
  public boolean keyStands() {
    long s = lines.startSoffit();
    long t = lines.startTop();
    return outerEdge(fan ? s : Math.max(s, t), extra(s, t)) <= before;
  }

  /** Whether joint {@code index} may stand at a foot: clear of the jamb line at both its ends. */
  public boolean jointStands(int index, long foot) {
    return inside(index, foot) || beyond(index, foot);
  }

  /** Whether it may stand there on this side of the jamb line. */
  boolean inside(int index, long foot) {
    long s = lines.soffit(index, foot);
    long t = lines.top(index, foot);
    return outerEdge(fan ? s : Math.max(s, t), extra(s, t)) <= before && spared(index, foot);
  }

  /** Whether it may stand there beyond the jamb line. */
  boolean beyond(int index, long foot) {
    long s = lines.soffit(index, foot);
    long t = lines.top(index, foot);
    return (fan ? s : Math.min(s, t)) - extra(s, t) >= beyond && spared(index, foot);
  }

  private boolean spared(int index, long foot) {
    return most == ANY || spare.joint(index, foot) <= most;
  }

  /**
   * How many ticks along x the last place inside may lie off the first that is not, and likewise
   * beyond: what a raked mortar joint takes along x differs from foot to foot.
   *
   * @param index number of the joint
   * @param first the inmost foot
   * @param last the outmost
   */
  long unsteady(int index, long first, long last) {
    if (terms.joint() == 0 || !lines.onTop()) {
      return 0;
    }
    double most = 0;
    for (long foot : new long[] {first, last}) {
      double rake = Math.abs(lines.top(index, foot) - lines.soffit(index, foot)) + 2;
      most = Math.max(most, slant(0, rake));
    }
    return (long) Math.ceil(most) + 2;
  }

  /** Where the edge of a joint that faces the centre line stands at its nearer or farther end. */
  long across(int index, long foot, boolean farther) {
    long s = lines.soffit(index, foot);
    long t = lines.top(index, foot);
    return fan ? s : farther ? Math.max(s, t) : Math.min(s, t);
  }

  /** Whether a joint keeps the same rule whatever its number. */
  boolean alike() {
    return most == ANY;
  }

  /** What joints and ends want of spare. */
  Spare spare() {
    return spare;
  }

  /** What joint {@code index} wants of spare at a foot where it may stand, pm. */
  public long wants(int index, long foot) {
    return spare.joint(index, foot);
  }

  /** What an end wants of spare after so many stones, pm. */
  public long wants(int count, End end) {
    return spare.end(count, end);
  }

  /** Whether a joint that lies off the grid may stand where it does; feet in ticks. */
  public boolean stands(double s, double t) {
    double extra = slant(s, t);
    return (fan ? s : Math.max(s, t)) + terms.joint() + extra <= before + NOTHING
        || (fan ? s : Math.min(s, t)) - extra >= beyond - NOTHING;
  }

  private double outerEdge(long foot, double extra) {
    return foot + terms.joint() + extra;
  }

  /** What a raked joint takes more along x on either side than a plumb one, ticks. */
  private double extra(long soffit, long top) {
    return slant(soffit, top);
  }

  private double slant(double soffit, double top) {
    return slant(terms, soffit, top);
  }

  /** What half a raked joint takes more along x than half a plumb one, ticks. */
  static double slant(FlatTerms terms, double soffit, double top) {
    if (terms.joint() == 0 || soffit == top) {
      return 0;
    }
    double slope = (top - soffit) / terms.height();
    return terms.joint() / 2.0 * (Math.sqrt(1 + slope * slope) - 1);
  }

  /** Whether stone {@code index} between two joints has a width allowed and a blank wide enough. */
  public boolean stoneFits(int index, long inner, long outer) {
    long s = lines.soffit(index, outer);
    long t = lines.top(index, outer);
    return fits(index, inner, outer, s, t, extra(s, t));
  }

  /** Whether stone {@code index} between a joint and an end does. */
  public boolean endFits(int index, long inner, End end) {
    return fits(index, inner, end.foot(), end.soffit(), end.top(), 0);
  }

  private boolean fits(int index, long inner, long outer, long soffit, long top, double extra) {
    double from = index == 1 ? lines.trueStart() : inner;
    double width = outer - from - terms.joint();
    if (width < terms.widths().min() - NOTHING || width > terms.widths().max() + NOTHING) {
      return false;
    }
    if (index == 1 && !follows(width)) {
      return false;
    }
    double s0 = index == 1 ? lines.trueSoffit() : lines.soffit(index - 1, inner);
    double t0 = index == 1 ? lines.trueTop() : lines.top(index - 1, inner);
    // Raked edges beside mortar leave the stone itself a little narrower than its feet say.
    double lost = extra + slant(s0, t0);
    return (lost == 0 || Math.round(width - lost) >= terms.widths().min())
        && soffit - s0 - lost > terms.joint()
        && top - t0 - lost > terms.joint()
        && Math.max(soffit, top) - Math.min(s0, t0) - terms.joint() <= terms.usable();
  }

  /** What neighbours keep to holds beside a stone that was cut already, too. */
  private boolean follows(double width) {
    double off = Math.abs(width - lines.previous());
    boolean mixed = terms.stones().rhythm() == HeadSpec.Rhythm.MIXED;
    boolean picked = terms.stones().rhythm() == HeadSpec.Rhythm.FROM_STOCK;
    return Double.isNaN(off)
        || !mixed && !picked
        || (picked || off >= terms.widths().step() - NOTHING)
            && off <= terms.widths().jump() + NOTHING;
  }
}
