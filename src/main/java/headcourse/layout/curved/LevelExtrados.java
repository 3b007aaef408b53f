package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import java.util.ArrayList;
import java.util.List;

/**
 * An extrados on one level line; where the joints would run out too far it turns down plumb. The
 * stone at the corner has five sides.
 *
 * @param level height of the line
 * @param plumb distance of the plumb ends from the centre line
 * @param last the skewback
 */
record LevelExtrados(double level, double plumb, CutLine last) implements Extrados {
  private boolean meetsLevel(CutLine line) {
    return line.toHeight(level) <= line.toPlumb(plumb);
  }

  @Override
  public Point head(CutLine line) {
    return meetsLevel(line)
        ? new Point(line.at(line.toHeight(level)).x(), level)
        : new Point(plumb, line.at(line.toPlumb(plumb)).y());
  }

  @Override
  public List<Edge> top(int stone, CutLine inner, CutLine outer) {
    List<Edge> edges = new ArrayList<>();
    Point from = head(inner);
    if (meetsLevel(inner) && !meetsLevel(outer)) {
      Point corner = new Point(plumb, level);
      edges.add(new Straight(from, corner));
      from = corner;
    }
    edges.add(new Straight(from, head(outer)));
    return edges;
  }

  @Override
  public Extrados raised(double rise) {
    return new LevelExtrados(level + rise, plumb, last);
  }

  @Override
  public double sliver(List<CutLine> joints) {
    Point corner = new Point(plumb, level);
    // A skewback that reaches the level line has no corner beyond it.
    return meetsLevel(last)
        ? Double.POSITIVE_INFINITY
        : joints.stream().mapToDouble(j -> head(j).distance(corner)).min().orElseThrow();
  }

  @Override
  public List<Edge> half() {
    return top(0, CutLine.CENTRE, last);
  }
}
