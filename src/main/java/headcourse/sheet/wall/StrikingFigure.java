package headcourse.sheet.wall;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Label;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.HeadLayout;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A curved head's lines as they are struck out: springing, centre line, centres, rods, arcs. */
final class StrikingFigure {
  private static final double TOP = 9;
  private static final double BOTTOM = 9;
  private static final double SIDE = 12;

  private final SheetContext context;
  private final HeadLayout layout;
  private final List<StrikingPoint> points;
  private final Box box;

  StrikingFigure(SheetContext context, HeadLayout layout, List<StrikingPoint> points) {
    this.context = context;
    this.layout = layout;
    this.points = points;
    this.box = box();
  }

  // Centres that lie too far off are named at the foot of the drawing instead.
  private Box box() {
    HeadLayout.Curve c = layout.curve();
    Box b = c.intrados().bounds().union(c.extrados().bounds());
    b = b.union(new Box(b.minX(), 0, b.maxX(), 0));
    for (HeadLayout.Place p : c.places()) {
      b = b.union(new Box(p.at().x(), p.at().y(), p.at().x(), p.at().y()));
    }
    for (HeadLayout.Centre m : c.centres()) {
      if (near(m, b)) {
        b = b.union(new Box(m.at().x(), m.at().y(), m.at().x(), m.at().y()));
      }
    }
    return b;
  }

  private boolean near(HeadLayout.Centre m, Box arch) {
    return -m.at().y() <= 1.5 * layout.halfWidth().mm()
        && Math.abs(m.at().x()) <= 2.5 * layout.halfWidth().mm();
  }

  Scale scale(double width, double height) {
    return Scale.largest(
        context.job().units(), box.width(), box.height(), width - 2 * SIDE, height - TOP - BOTTOM);
  }

  double height(Scale scale) {
    return TOP + box.height() * scale.factor() + BOTTOM;
  }

  void draw(Board b, Scale scale, double x, double y, double width) {
    double f = scale.factor();
    Similarity view =
        Similarity.toPaper(
            f, new Point(x + width / 2 - box.centre().x() * f, y + TOP + box.maxY() * f));
    HeadLayout.Curve c = layout.curve();
    b.stroke(c.intrados().transformed(view), Pen.OUTLINE);
    b.stroke(c.extrados().transformed(view), Pen.EDGE);
    for (HeadLayout.Centre m : c.centres()) {
      if (near(m, box)) {
        rods(b, view, m);
      }
    }
    for (HeadLayout.Place p : c.places()) {
      if (p.name().equals("focus")) {
        nail(b, view, p.at());
      }
    }
    for (StrikingPoint p : points) {
      b.stroke(Path.circle(view.apply(p.at()), 1), Pen.CUT);
    }
    double half = layout.halfWidth().mm();
    for (StrikingPoint p : points) {
      name(b, view.apply(p.at()), p.name(), new Lettering(5, true));
    }
    for (HeadLayout.Centre m : c.centres()) {
      if (near(m, box)) {
        name(b, view.apply(m.at()), m.name(), new Lettering(7, true));
      }
    }
    for (HeadLayout.Place p : c.places()) {
      if (p.name().equals("focus")) {
        name(b, view.apply(p.at()), "F", new Lettering(7, true));
      }
    }
    String line = context.say("wall.springing-line");
    Point right = view.apply(new Point(half, 0));
    Point left = view.apply(new Point(-half, 0));
    List<Label> places = new ArrayList<>();
    for (double t : new double[] {0.25, 0.75, 0.15, 0.85, 0.5}) {
      for (double dy : new double[] {-1.5, 4}) {
        Point at = left.towards(right, t);
        places.add(
            new Label(new Point(at.x(), at.y() + dy), line, Lettering.NOTE, Align.MIDDLE, 0));
      }
    }
    b.firstFree(places, 0.5);
    Point axis = view.apply(Point.ORIGIN);
    double head = view.apply(new Point(0, box.maxY())).y();
    double foot = view.apply(new Point(0, box.minY())).y();
    String centre = context.say("wall.centre-line");
    b.firstFree(
        List.of(new Label(new Point(axis.x(), y + 3), centre, Lettering.NOTE, Align.MIDDLE, 0)),
        0.3);
    b.lineAround(new Point(axis.x(), head - 4), new Point(axis.x(), foot + 5), Pen.CENTRE);
    b.lineAround(
        new Point(view.apply(new Point(box.minX(), 0)).x() - 8, axis.y()),
        new Point(view.apply(new Point(box.maxX(), 0)).x() + 8, axis.y()),
        Pen.CENTRE);
  }

  // A nail of an ellipse, and the string while the pencil stands at the crown.
  private void nail(Board b, Similarity view, Point focus) {
    Point at = view.apply(focus);
    b.line(at.x() - 2, at.y(), at.x() + 2, at.y(), Pen.CUT);
    b.line(at.x(), at.y() - 2, at.x(), at.y() + 2, Pen.CUT);
    if (Math.abs(focus.x()) > 1e-6) {
      Point crown =
          layout.curve().intrados().edges().stream()
              .map(Edge::to)
              .max(Comparator.comparingDouble(Point::y))
              .orElseThrow();
      b.line(at, view.apply(crown), Pen.FINE);
    }
  }

  // The rod where its arc begins and where it ends.
  private static void rods(Board b, Similarity view, HeadLayout.Centre m) {
    Point at = view.apply(m.at());
    b.line(at.x() - 2, at.y(), at.x() + 2, at.y(), Pen.CUT);
    b.line(at.x(), at.y() - 2, at.x(), at.y() + 2, Pen.CUT);
    for (double angle : new double[] {m.fromAngle(), m.toAngle()}) {
      Point tip = m.at().plus(Vec.direction(angle).times(m.trammel()));
      b.line(at, view.apply(tip), Pen.FINE);
    }
  }

  private static void name(Board b, Point at, String text, Lettering lettering) {
    List<Label> places = new ArrayList<>();
    double cap = lettering.height();
    for (double far : new double[] {2.2, 4, 6.5, 10, 14}) {
      places.add(new Label(new Point(at.x() + far, at.y() - far), text, lettering, Align.START, 0));
      places.add(new Label(new Point(at.x() - far, at.y() - far), text, lettering, Align.END, 0));
      places.add(
          new Label(new Point(at.x() + far, at.y() + far + cap), text, lettering, Align.START, 0));
      places.add(
          new Label(new Point(at.x() - far, at.y() + far + cap), text, lettering, Align.END, 0));
      places.add(
          new Label(new Point(at.x(), at.y() - far - 0.5), text, lettering, Align.MIDDLE, 0));
      places.add(
          new Label(new Point(at.x(), at.y() + far + cap), text, lettering, Align.MIDDLE, 0));
    }
    b.firstFree(places, 0.5);
  }

  /** The places where the edges of an intrados begin, meet and end, numbered from the left. */
  static List<StrikingPoint> points(HeadLayout layout) {
    List<StrikingPoint> list = new ArrayList<>();
    List<Edge> edges = layout.curve().intrados().edges();
    for (int i = 0; i <= edges.size(); i++) {
      Point at = i == 0 ? edges.get(0).from() : edges.get(i - 1).to();
      list.add(new StrikingPoint(Integer.toString(i + 1), at));
    }
    return list;
  }
}
