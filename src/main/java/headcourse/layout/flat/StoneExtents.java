package headcourse.layout.flat;

import headcourse.geom.Point;
import java.util.HashMap;
import java.util.Map;

/**
 * How long the stones of a side are along the blanks that they are cut from: extent of the outline
 * in the direction of its soffit, in ticks, rounded up to the grid. It grows with the rakes, so in a
 * fan it depends on where the stone stands.
 */
public final class StoneExtents {
  /** What arithmetic leaves of nothing, ticks. */
  private static final double NOTHING = 1e-6;

  private final FlatTerms terms;
  private final Lines lines;
  private final SoffitLine soffit;
  private final double height;
  private final double tick;
  private final Map<Long, Corners> near = new HashMap<>();
  private final Map<Long, Corners> far = new HashMap<>();
  private final Map<Long, Corners> ends = new HashMap<>();

  /** Lower and upper corner of a stone on one of its edges, mm. */
  private record Corners(Point lower, double upper) {}

  StoneExtents(FlatTerms terms, FlatGeometry geometry, Lines lines) {
    this.terms = terms;
    this.lines = lines;
    this.soffit = new SoffitLine(terms.mm(1) * terms.half() / terms.tick(), geometry.camber());
    this.height = terms.mm(terms.height());
    this.tick = terms.mm(1);
  }

  /** Extent of stone {@code index} between two joints. */
  public long between(int index, long inner, long outer) {
    return extent(
        inner(index, inner),
        far.computeIfAbsent(
            outer,
            f -> corners(EdgeLine.inner(terms, pm(lines.soffit(index, f)), pm(lines.top(index, f))))));
  }

  /** Extent of stone {@code index} between a joint and an end. */
  public long toEnd(int index, long inner, End end) {
    return extent(
        inner(index, inner),
        ends.computeIfAbsent(
            end.foot(), f -> corners(EdgeLine.end(terms, pm(end.soffit()), pm(end.top())))));
  }

  private Corners inner(int index, long foot) {
    if (index == 1) {
      return near.computeIfAbsent(
          Long.MIN_VALUE,
          f -> corners(EdgeLine.outer(terms, pm(lines.startSoffit()), pm(lines.startTop()))));
    }
    return near.computeIfAbsent(
        foot,
        f ->
            corners(
                EdgeLine.outer(
                    terms, pm(lines.soffit(index - 1, f)), pm(lines.top(index - 1, f)))));
  }

  private long pm(long ticks) {
    return ticks * terms.tick();
  }

  private Corners corners(EdgeLine edge) {
    return new Corners(soffit.meets(edge), edge.head());
  }

  private long extent(Corners a, Corners b) {
    double most = Math.max(b.lower.x(), b.upper) - Math.min(a.lower.x(), a.upper);
    if (!soffit.level()) {
      double dx = b.lower.x() - a.lower.x();
      double dy = b.lower.y() - a.lower.y();
      double length = Math.hypot(dx, dy);
      double right = Math.max(length, along(b.upper, a.lower, dx, dy) / length);
      most = right - Math.min(0, along(a.upper, a.lower, dx, dy) / length);
    }
    return (long) Math.ceil(most / tick - NOTHING);
  }

  /** How far an upper corner lies along the line between the lower ones, times its length. */
  private double along(double upper, Point from, double dx, double dy) {
    return (upper - from.x()) * dx + (height - from.y()) * dy;
  }
}
