package headcourse.render.pdf;

import headcourse.drawing.Pen;
import headcourse.geom.Arc;
import headcourse.geom.Cubic;
import headcourse.geom.Edge;
import headcourse.geom.EllipticArc;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Draws paths on one page and changes pens and colours only where they differ. */
final class Ink {
  /** A colour that is none of the marks' own. */
  static final int NO_COLOUR = -1;

  /** How far a Bézier may lie from the arc that it stands for, mm. */
  private static final double ARC_TOLERANCE = 0.002;

  private final PDPageContentStream out;
  private final PaperSpace space;
  private Pen pen;
  private int lineColour;
  private double grey = -1;
  private int fillColour = NO_COLOUR;

  Ink(PDPageContentStream out, PaperSpace space) throws IOException {
    this.out = out;
    this.space = space;
    out.setLineJoinStyle(1);
  }

  void stroke(Path path, Pen with, int rgb) throws IOException {
    int colour = rgb == NO_COLOUR ? 0 : rgb;
    if (colour != lineColour) {
      lineColour = colour;
      out.setStrokingColor(red(colour), green(colour), blue(colour));
    }
    if (pen == null || pen.width() != with.width()) {
      out.setLineWidth(space.length(with.width()));
    }
    if (pen == null || pen.pattern() != with.pattern()) {
      double[] mm = with.pattern().dashes();
      float[] dashes = new float[mm.length];
      for (int i = 0; i < mm.length; i++) {
        dashes[i] = space.length(mm[i]);
      }
      out.setLineDashPattern(dashes, 0);
    }
    pen = with;
    trace(path);
    out.stroke();
  }

  void fill(Path path, double shade, int rgb) throws IOException {
    fill(shade, rgb);
    trace(path);
    out.fill();
  }

  /** What follows is filled so: a grey from 0, black, to 1, or a colour. */
  void fill(double shade, int rgb) throws IOException {
    if (rgb == NO_COLOUR) {
      if (shade != grey) {
        out.setNonStrokingColor((float) shade);
      }
      grey = shade;
    } else {
      if (rgb != fillColour) {
        out.setNonStrokingColor(red(rgb), green(rgb), blue(rgb));
      }
      grey = -1;
    }
    fillColour = rgb;
  }

  private static float red(int rgb) {
    return (rgb >> 16 & 255) / 255f;
  }

  private static float green(int rgb) {
    return (rgb >> 8 & 255) / 255f;
  }

  private static float blue(int rgb) {
    return (rgb & 255) / 255f;
  }

  /** The path as the current one, not painted yet. */
  private void trace(Path path) throws IOException {
    Point start = path.start();
    List<Edge> edges = path.edges();
    out.moveTo(x(start), y(start));
    int last = edges.size() - 1;
    for (int i = 0; i <= last; i++) {
      Edge e = edges.get(i);
      if (e instanceof Arc a) {
        arc(a.centre(), a.radius(), a.radius(), 0, a.start(), a.sweep());
      } else if (e instanceof EllipticArc a) {
        arc(a.centre(), a.rx(), a.ry(), a.turn(), a.start(), a.sweep());
      } else if (e instanceof Cubic c) {
        curve(c.control1(), c.control2(), c.to());
      } else if (!(path.closed() && i == last && i > 0)) {
        // The last side of a polygon is drawn by closing it, so that its corner is mitred.
        out.lineTo(x(e.to()), y(e.to()));
      }
    }
    if (path.closed() && edges.get(last).to().distance(start) < 1e-3) {
      out.closePath();
    }
  }

  /**
   * Cubics along an elliptic arc. One of angle θ leaves the circle by R · 4/27 · sin⁶(θ/4) ÷
   * cos²(θ/4) (Goldapp, Approximation of circular arcs by cubic polynomials, 1991; from memory).
   */
  private void arc(Point c, double rx, double ry, double turn, double start, double sweep)
      throws IOException {
    double radius = Math.max(rx, ry);
    int n = Math.max(1, (int) Math.ceil(Math.abs(sweep) / (Math.PI / 2) - 1e-9));
    while (deviation(radius, sweep / n) > ARC_TOLERANCE) {
      n++;
    }
    double step = sweep / n;
    double k = 4.0 / 3.0 * Math.tan(step / 4);
    for (int i = 0; i < n; i++) {
      double a = start + step * i;
      double b = start + step * (i + 1);
      double ca = Math.cos(a);
      double sa = Math.sin(a);
      double cb = Math.cos(b);
      double sb = Math.sin(b);
      curve(
          on(c, turn, rx * (ca - k * sa), ry * (sa + k * ca)),
          on(c, turn, rx * (cb + k * sb), ry * (sb - k * cb)),
          on(c, turn, rx * cb, ry * sb));
    }
  }

  static double deviation(double radius, double angle) {
    double s = Math.sin(angle / 4);
    double cos = Math.cos(angle / 4);
    return radius * 4 / 27 * Math.pow(s, 6) / (cos * cos);
  }

  private static Point on(Point c, double turn, double x, double y) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new Point(c.x() + cos * x - sin * y, c.y() + sin * x + cos * y);
  }

  private void curve(Point a, Point b, Point to) throws IOException {
    out.curveTo(x(a), y(a), x(b), y(b), x(to), y(to));
  }

  private float x(Point p) {
    return space.length(p.x());
  }

  private float y(Point p) {
    return space.y(p.y());
  }
}
