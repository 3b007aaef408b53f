package headcourse.layout.side;

import headcourse.geom.Point;
import headcourse.layout.Side;
import java.util.Arrays;
import java.util.function.LongFunction;

/**
 * How long the stones of a side are along the blanks that they are cut from: extent of the outline
 * in the direction of its soffit, in ticks, rounded up to the grid. It grows with the rakes, so in
 * a fan it depends on where the stone stands.
 */
public final class StoneExtents {
  /** What arithmetic leaves of nothing, ticks. */
  private static final double NOTHING = 1e-6;

  private final Lines lines;
  private final SoffitLine soffit;
  private final double height;
  private final double tick;
  private final long unit;
  private final Corners first;
  private final Edges near;
  private final Edges far;
  private final FlatTerms terms;
  private End last;
  private Corners lastCorners;

  /** Lower and upper corner of a stone on one of its edges, mm. */
  private record Corners(double x, double y, double upper) {}

  /** The corners on one edge of every joint asked for. */
  private static final class Edges {
    private final long from;
    private final LongFunction<Corners> made;
    private Corners[] known = new Corners[64];

    Edges(long from, LongFunction<Corners> made) {
      this.from = from;
      this.made = made;
    }

    Corners at(long foot) {
      int i = (int) (foot - from);
      if (i >= known.length) {
        known = Arrays.copyOf(known, Math.max(i + 1, 2 * known.length));
      }
      if (known[i] == null) {
        known[i] = made.apply(foot);
      }
      return known[i];
    }
  }

  StoneExtents(FlatTerms terms, FlatGeometry geometry, Lines lines, Side side) {
    this.terms = terms;
    this.lines = lines;
    this.soffit = SoffitLine.of(terms, geometry.camber()).outwards(side);
    this.height = terms.mm(terms.height());
    this.tick = terms.mm(1);
    this.unit = terms.tick();
    // Beside a stone that is cut already the first edge may lie off the grid and lean as it likes.
    this.first =
        corners(EdgeLine.outer(terms, places(lines.trueSoffit()), places(lines.trueTop())));
    // Only a fan asks, and all its joints follow one rule.
    // Joints nearer the centre than this key's may be asked for on behalf of a narrower one.
    long from = Math.min(0, lines.start());
    this.near = new Edges(from, f -> corners(EdgeLine.outer(terms, soffit(f), top(f))));
    this.far = new Edges(from, f -> corners(EdgeLine.inner(terms, soffit(f), top(f))));
  }

  private long places(double ticks) {
    return Math.round(ticks * unit);
  }

  private long soffit(long foot) {
    return lines.soffit(lines.regularFrom(), foot) * unit;
  }

  private long top(long foot) {
    return lines.top(lines.regularFrom(), foot) * unit;
  }

  /** Extent of stone {@code index} between two joints. */
  public long between(int index, long inner, long outer) {
    return extent(inner(index, inner), far.at(outer));
  }

  /** Extent of stone {@code index} between a joint and an end. */
  public long toEnd(int index, long inner, End end) {
    if (!end.equals(last)) {
      lastCorners = corners(EdgeLine.end(terms, end.soffit() * unit, end.top() * unit));
      last = end;
    }
    return extent(inner(index, inner), lastCorners);
  }

  /**
   * Extent of a stone that is cut already, along the blank as it would have been laid.
   *
   * @param of the stones of its side
   * @param index which of them, from 1 outwards
   * @param end whether it is the end stone
   */
  public long cut(CutStones of, int index, boolean end) {
    EdgeLine inner = EdgeLine.outer(terms, of.soffit(index - 1), of.top(index - 1));
    long s = of.soffit(index);
    long t = of.top(index);
    EdgeLine outer = end ? EdgeLine.end(terms, s, t) : EdgeLine.inner(terms, s, t);
    return extent(corners(inner), corners(outer));
  }

  private Corners inner(int index, long foot) {
    return index == 1 ? first : near.at(foot);
  }

  private Corners corners(EdgeLine edge) {
    Point lower = soffit.meets(edge);
    return new Corners(lower.x(), lower.y(), edge.head());
  }

  private long extent(Corners a, Corners b) {
    double most = Math.max(b.x, b.upper) - Math.min(a.x, a.upper);
    if (!soffit.level()) {
      double dx = b.x - a.x;
      double dy = b.y - a.y;
      double length = Math.hypot(dx, dy);
      double right = Math.max(length, along(b.upper, a, dx, dy) / length);
      most = right - Math.min(0, along(a.upper, a, dx, dy) / length);
    }
    return (long) Math.ceil(most / tick - NOTHING);
  }

  /** How far an upper corner lies along the line between the lower ones, times its length. */
  private double along(double upper, Corners from, double dx, double dy) {
    return (upper - from.x) * dx + (height - from.y) * dy;
  }
}
