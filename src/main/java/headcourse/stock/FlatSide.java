package headcourse.stock;

import headcourse.layout.flat.Choice;
import headcourse.layout.flat.End;
import headcourse.layout.flat.Lines;
import headcourse.layout.flat.SideCase;
import headcourse.layout.flat.SideCheck;
import headcourse.layout.flat.StoneExtents;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** One side of a flat head, as the choice from a pile sees it. */
final class FlatSide implements PileSide {
  private final Lines lines;
  private final SideCheck check;
  private final List<End> ends;
  private final End[] endAt;
  private final StoneExtents extents;
  private final long joint;
  private final long first;
  private final long[] off;

  /**
   * @param one its joint lines and ends
   * @param check its hard constraints
   * @param joint width of a joint, ticks
   * @param target bearing to aim at
   */
  FlatSide(SideCase one, SideCheck check, long joint, Length target) {
    this(one, check, null, joint, target);
  }

  /**
   * The same for a side that may be a fan's.
   *
   * @param extents how long its stones are, or null where only their place in the row decides
   */
  FlatSide(SideCase one, SideCheck check, StoneExtents extents, long joint, Length target) {
    this.extents = extents;
    this.lines = one.lines();
    this.check = check;
    this.ends = one.ends();
    this.joint = joint;
    this.first = ends.get(0).foot();
    this.off = new long[(int) (ends.get(ends.size() - 1).foot() - first + 1)];
    this.endAt = new End[off.length];
    java.util.Arrays.fill(off, -1);
    for (End e : ends) {
      off[(int) (e.foot() - first)] = Math.abs(e.bearing() - target.picometres());
      endAt[(int) (e.foot() - first)] = e;
    }
  }

  @Override
  public long start() {
    return lines.start();
  }

  @Override
  public long joint() {
    return joint;
  }

  @Override
  public long firstEnd() {
    return first;
  }

  @Override
  public long lastEnd() {
    return first + off.length - 1;
  }

  @Override
  public long bearingOff(long foot) {
    return foot < firstEnd() || foot > lastEnd() ? -1 : off[(int) (foot - first)];
  }

  @Override
  public boolean jointStands(int index, long foot) {
    return check.jointStands(index, foot);
  }

  @Override
  public boolean stoneFits(int index, long inner, long outer) {
    return check.stoneFits(index, inner, outer);
  }

  @Override
  public boolean endFits(int index, long inner, long end) {
    return bearingOff(end) >= 0 && check.endFits(index, inner, end(end));
  }

  private End end(long foot) {
    return java.util.Objects.requireNonNull(endAt[(int) (foot - first)]);
  }

  /**
   * What the outer edge leans out above and the inner edge leans in; beside a stone that is cut
   * already, also what its joint stands short of the grid. The end is plumb, so that of an end
   * stone under the key's rake is a little less.
   */
  @Override
  public long extra(int index) {
    if (fanned()) {
      return 0;
    }
    long outer = Math.max(0, lean(index));
    if (index > 1) {
      return outer + Math.max(0, 0 - lean(index - 1));
    }
    double inner = Math.min(lines.trueSoffit(), lines.trueTop());
    return outer + (long) Math.ceil(Math.max(0, start() - inner) - 1e-9);
  }

  @Override
  public long extent(int index, long inner, long outer, boolean end) {
    if (extents == null) {
      return PileSide.super.extent(index, inner, outer, end);
    }
    return end ? extents.toEnd(index, inner, end(outer)) : extents.between(index, inner, outer);
  }

  @Override
  public boolean fanned() {
    return extents != null;
  }

  @Override
  public boolean sameJoints(PileSide other) {
    return other instanceof FlatSide f
        && f.joint == joint
        && f.lines.striking() == lines.striking()
        && f.regularFrom() == regularFrom()
        && f.check.clearsAs(check);
  }

  @Override
  public boolean sameEnds(PileSide other) {
    return other instanceof FlatSide f
        && f.first == first
        && f.lines.striking() == lines.striking()
        && java.util.Arrays.equals(f.off, off);
  }

  @Override
  public int regularFrom() {
    return lines.regularFrom() + 1;
  }

  private long lean(int index) {
    return lines.top(index, start()) - lines.soffit(index, start());
  }

  /** Its joint lines. */
  Lines lines() {
    return lines;
  }

  /** The places where it may end. */
  List<End> ends() {
    return ends;
  }

  /** The outmost of them. */
  End outmost() {
    return ends.get(ends.size() - 1);
  }

  /** The side set out with the stones chosen. */
  Choice choice(List<Pile.Picked> stones) {
    List<Long> feet = new ArrayList<>();
    long at = start();
    for (Pile.Picked p : stones) {
      at += joint + p.width();
      feet.add(at);
    }
    long[] inner = feet.stream().limit(feet.size() - 1).mapToLong(f -> f).toArray();
    return new Choice(lines, end(at), inner);
  }

  /** Two sides of a head with the same joint lines and ends are alike. */
  @Override
  public boolean equals(Object o) {
    // Asked often, and mostly of one and the same.
    return this == o
        || o instanceof FlatSide f
            && f.first == first
            && f.joint == joint
            && f.start() == start()
            && startsAs(f)
            && f.check.clearsAs(check)
            && f.lines.striking() == lines.striking()
            && java.util.Arrays.equals(f.off, off)
            && f.ends.equals(ends);
  }

  /** Whether both begin at the same edge, and beside a stone as wide. */
  private boolean startsAs(FlatSide f) {
    return f.lines.trueSoffit() == lines.trueSoffit()
        && f.lines.trueTop() == lines.trueTop()
        && Double.compare(f.lines.previous(), lines.previous()) == 0;
  }

  @Override
  public int hashCode() {
    return ends.hashCode();
  }
}
