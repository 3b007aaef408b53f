package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * An extrados stepped to the wall's courses: every stone has a level top on a bed joint of the wall
 * and a plumb shoulder down to the top of the next, so that the wall's stones close against it
 * square and no inner corner is cut. Each joint is at least as long as the ring is deep. Where a
 * step would leave a stone too narrow a top, it keeps the level of the one above; beyond the plumb
 * ends nothing runs out.
 */
final class SteppedExtrados implements Extrados {
  /** Least top of a stone, as a part of the ring's depth. Common practice, no source. */
  private static final double LEAST_TOP = 0.25;

  private final Division division;
  private final double plumb;
  private final double end;
  private final double crown;
  private final double[] levels;

  private SteppedExtrados(
      Division division, double plumb, double end, double crown, double[] levels) {
    this.division = division;
    this.plumb = plumb;
    this.end = end;
    this.crown = crown;
    this.levels = levels;
  }

  /**
   * Finds the steps.
   *
   * @param ring a ring of the least depth
   * @param division the joints
   * @param course the least bed joint at or above a height
   * @param plumb distance of the plumb ends from the centre line
   */
  static SteppedExtrados over(
      ConcentricExtrados ring, Division division, DoubleUnaryOperator course, double plumb) {
    List<CutLine> joints = division.lines();
    double crown = course.applyAsDouble(ring.head(CutLine.CENTRE).y());
    int n = division.each();
    double least = LEAST_TOP * ring.depth();
    double[] levels = new double[n + 1];
    double above = crown;
    double reached = 0;
    for (int i = 0; i <= n; i++) {
      CutLine edge = division.outer(i);
      double level = i == n ? above : course.applyAsDouble(ring.head(joints.get(i)).y());
      level = Math.min(above, level);
      while (level < above && reach(edge, level, plumb) < reached + least) {
        level = Math.min(above, course.applyAsDouble(level + 10 * Tolerance.SAME));
      }
      levels[i] = level;
      above = level;
      reached = i == n ? reached : reach(division.inner(i + 1), level, plumb);
    }
    // The end stands plumb as far out as the skewback is deep, or as its stone needs.
    double end = Math.min(plumb, Math.max(ring.head(joints.get(n)).x(), reached + least));
    return new SteppedExtrados(division, plumb, end, crown, levels);
  }

  private static double reach(CutLine line, double level, double plumb) {
    return meet(line, level, plumb).x();
  }

  private static Point meet(CutLine line, double level, double plumb) {
    double t = line.toHeight(level);
    return t <= line.toPlumb(plumb)
        ? new Point(line.at(t).x(), level)
        : new Point(plumb, line.at(line.toPlumb(plumb)).y());
  }

  private double levelOf(int stone) {
    return stone == 0 ? crown : levels[stone - 1];
  }

  @Override
  public Point head(CutLine line) {
    double level = line.joint() < 0 ? crown : levels[line.joint()];
    return meet(line, level, line.joint() == division.each() ? end : plumb);
  }

  @Override
  public List<Edge> top(int stone, CutLine inner, CutLine outer) {
    double level = levelOf(stone);
    Point from = inner.joint() < 0 ? new Point(0, level) : head(inner);
    Point to = head(outer);
    List<Edge> edges = new ArrayList<>();
    if (level - from.y() < Tolerance.SAME && level - to.y() > Tolerance.SAME) {
      Point corner = new Point(to.x(), level);
      edges.add(new Straight(from, corner));
      from = corner;
    }
    edges.add(new Straight(from, to));
    return edges;
  }

  @Override
  public Extrados raised(double rise) {
    return new SteppedExtrados(division, plumb, end, crown + rise, levels);
  }

  @Override
  public double sliver(List<CutLine> joints) {
    return joints.stream()
        .mapToDouble(j -> Math.min(plumb, end) - head(j).x())
        .filter(d -> d > Tolerance.SAME)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  @Override
  public List<Edge> half() {
    // A step stands at the edge of the stone above it, the joint's mortar lies level beside it.
    List<Edge> edges = new ArrayList<>();
    CutLine inner = CutLine.CENTRE;
    for (int i = division.key() ? 0 : 1; i <= division.each(); i++) {
      CutLine outer = division.outer(i);
      edges.addAll(top(i, inner, outer));
      inner = outer;
    }
    edges.add(new Straight(head(inner), head(division.lines().get(division.each()))));
    return edges;
  }
}
