package headcourse.layout.yard;

import headcourse.layout.fitted.FittedHead;
import headcourse.layout.side.Choice;
import headcourse.layout.side.End;
import headcourse.layout.side.Lines;
import headcourse.layout.side.SideCheck;
import headcourse.layout.side.StoneExtents;
import headcourse.layout.yard.rows.Answer;
import headcourse.layout.yard.rows.RowSide;
import java.util.Arrays;
import java.util.List;

/** What is left of one side of a flat head, as the search sees it. */
final class FlatSide implements RowSide {
  private final Lines lines;
  private final SideCheck check;
  private final StoneExtents extents;
  private final long joint;
  private final long first;
  private final End[] endAt;
  private final long target;

  /** What decides where stones may stand from {@link #regularFrom} on: ends tell the jamb too. */
  private final List<Object> rule;

  FlatSide(FittedHead.Left left) {
    lines = left.rest().lines();
    check = left.check();
    extents = left.lengths();
    joint = left.terms().joint();
    List<End> ends = left.rest().ends();
    first = ends.get(0).foot();
    endAt = new End[(int) (ends.get(ends.size() - 1).foot() - first + 1)];
    ends.forEach(e -> endAt[(int) (e.foot() - first)] = e);
    target = left.terms().bearing().target().picometres();
    int from = regularFrom();
    rule =
        List.of(
            lines.striking(), lines.onTop(), from, ends, joint, lines.there(), lines.measured());
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
  public long lastEnd() {
    return first + endAt.length - 1;
  }

  private End end(long foot) {
    return foot < first || foot > lastEnd() ? null : endAt[(int) (foot - first)];
  }

  @Override
  public long bearingOff(long foot) {
    End e = end(foot);
    return e == null ? -1 : Math.abs(e.bearing() - target);
  }

  @Override
  public boolean stands(int index, long inner, long outer, boolean last) {
    if (!last) {
      return check.jointStands(index, outer) && check.stoneFits(index, inner, outer);
    }
    End e = end(outer);
    return e != null && check.endFits(index, inner, e);
  }

  /**
   * An upright stone is as long as it is wide and what its outer edge leans out above and its inner
   * edge leans in; beside a stone that is cut already, also what its joint stands short of the
   * grid. The end is plumb, so that of an end stone under the key's rake is a little less.
   */
  @Override
  public long extent(int index, long inner, long outer, boolean last) {
    if (extents != null) {
      End e = last ? end(outer) : null;
      return e == null ? extents.between(index, inner, outer) : extents.toEnd(index, inner, e);
    }
    long width = outer - inner - joint + Math.max(0, lean(index));
    if (index > 1) {
      return width + Math.max(0, -lean(index - 1));
    }
    double edge = Math.min(lines.trueSoffit(), lines.trueTop());
    return width + (long) Math.ceil(Math.max(0, start() - edge) - 1e-9);
  }

  private long lean(int index) {
    return lines.top(index, start()) - lines.soffit(index, start());
  }

  @Override
  public long shortfall(int index, long foot, boolean last) {
    End e = last ? end(foot) : null;
    return e == null ? check.wants(index, foot) : check.wants(index, e);
  }

  @Override
  public boolean fanned() {
    return extents != null;
  }

  @Override
  public int regularFrom() {
    return lines.regularFrom() + 1;
  }

  @Override
  public Object rule() {
    return rule;
  }

  /** Where stones end, outwards. */
  long[] feet(List<Answer.Picked> stones) {
    long[] feet = stones.stream().mapToLong(p -> joint + p.width()).toArray();
    feet[0] += start();
    Arrays.parallelPrefix(feet, Long::sum);
    return feet;
  }

  /** The side with stones that end at such feet. */
  Choice choice(long[] feet) {
    int last = feet.length - 1;
    return new Choice(lines, end(feet[last]), Arrays.copyOf(feet, last));
  }
}
