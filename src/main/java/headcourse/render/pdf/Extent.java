package headcourse.render.pdf;

import headcourse.drawing.Mark;
import headcourse.geom.Arc;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.text.Face;

/** How far marks reach: the box of a figure. */
final class Extent {
  private double x0 = Double.POSITIVE_INFINITY;
  private double y0 = Double.POSITIVE_INFINITY;
  private double x1 = Double.NEGATIVE_INFINITY;
  private double y1 = Double.NEGATIVE_INFINITY;

  /** The box around a group, or null where nothing is drawn. */
  static Box of(Mark.Group group) {
    Extent e = new Extent();
    e.add(group);
    return e.x0 <= e.x1 ? new Box(e.x0, e.y0, e.x1, e.y1) : null;
  }

  private void add(Mark mark) {
    if (mark instanceof Mark.Group g) {
      for (Mark m : g.marks()) {
        add(m);
      }
    } else if (mark instanceof Mark.Coloured c) {
      add(c.mark());
    } else if (mark instanceof Mark.Stroke s) {
      add(s.path());
    } else if (mark instanceof Mark.Fill f) {
      add(f.path());
    } else if (mark instanceof Mark.Picture p) {
      add(p.box().minX(), p.box().minY());
      add(p.box().maxX(), p.box().maxY());
    } else if (mark instanceof Mark.Label l) {
      add(l);
    }
  }

  private void add(Path path) {
    Point start = path.start();
    add(start.x(), start.y());
    for (Edge e : path.edges()) {
      if (e instanceof Straight s) {
        add(s.to().x(), s.to().y());
      } else if (!(e instanceof Arc a && within(a))) {
        // A sixteenth of a curve is near enough for a box that tells where to look.
        for (int i = 1; i <= 16; i++) {
          Point p = e.at(i / 16.0);
          add(p.x(), p.y());
        }
      }
    }
  }

  /** Whether an arc cannot reach outside what there is already. */
  private boolean within(Arc a) {
    double r = a.radius();
    double x = a.centre().x();
    double y = a.centre().y();
    return x - r > x0 && x + r < x1 && y - r > y0 && y + r < y1;
  }

  private void add(Mark.Label l) {
    double h = l.lettering().height();
    double w = Face.of(l.lettering().bold()).width(l.text(), h);
    double from =
        switch (l.align()) {
          case START -> 0;
          case MIDDLE -> -w / 2;
          case END -> -w;
        };
    double c = Math.cos(Math.toRadians(l.degrees()));
    double s = Math.sin(Math.toRadians(l.degrees()));
    for (double along : new double[] {from, from + w}) {
      add(l.at().x() + along * c, l.at().y() - along * s);
      add(l.at().x() + along * c - h * s, l.at().y() - along * s - h * c);
    }
  }

  private void add(double x, double y) {
    x0 = x < x0 ? x : x0;
    y0 = y < y0 ? y : y0;
    x1 = x > x1 ? x : x1;
    y1 = y > y1 ? y : y1;
  }
}
