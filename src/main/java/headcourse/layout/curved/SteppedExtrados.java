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

  private final List<CutLine> joints;
  private final double plumb;
  private final double crown;
  private final double[] levels;

  private SteppedExtrados(List<CutLine> joints, double plumb, double crown, double[] levels) {
    this.joints = joints;
    this.plumb = plumb;
    this.crown = crown;
    this.levels = levels;
  }

  /**
   * Finds the steps.
   *
   * @param ring a ring of the least depth
   * @param joints joint lines from the key to the skewback
   * @param course the least bed joint at or above a height
   * @param plumb distance of the plumb ends from the centre line
   */
  static SteppedExtrados over(
      ConcentricExtrados ring, List<CutLine> joints, DoubleUnaryOperator course, double plumb) {
    double crown = course.applyAsDouble(ring.head(CutLine.CENTRE).y());
    double[] levels = new double[joints.size()];
    double above = crown;
    double reached = 0;
    for (int i = 0; i < levels.length; i++) {
      CutLine joint = joints.get(i);
      double least = ring.head(joint).y();
      boolean skewback = i == levels.length - 1;
      double level = skewback ? least : Math.min(above, course.applyAsDouble(least));
      while (level < above && reach(joint, level, plumb) < reached + LEAST_TOP * ring.depth()) {
        level =
            skewback ? above : Math.min(above, course.applyAsDouble(level + 10 * Tolerance.SAME));
      }
      levels[i] = level;
      above = level;
      reached = reach(joint, level, plumb);
    }
    return new SteppedExtrados(joints, plumb, crown, levels);
  }

  private static double reach(CutLine line, double level, double plumb) {
    double t = line.toHeight(level);
    return t <= line.toPlumb(plumb) ? line.at(t).x() : plumb;
  }

  private double levelOf(int stone) {
    return stone == 0 ? crown : levels[stone - 1];
  }

  @Override
  public Point head(CutLine line) {
    double level = line.joint() < 0 ? crown : levels[line.joint()];
    double t = line.toHeight(level);
    return t <= line.toPlumb(plumb)
        ? new Point(line.at(t).x(), level)
        : new Point(plumb, line.at(line.toPlumb(plumb)).y());
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
    return new SteppedExtrados(joints, plumb, crown + rise, levels);
  }

  @Override
  public List<Edge> half() {
    List<Edge> edges = new ArrayList<>(top(0, CutLine.CENTRE, joints.get(0)));
    for (int i = 1; i < joints.size(); i++) {
      edges.addAll(top(i, joints.get(i - 1), joints.get(i)));
    }
    return edges;
  }
}
