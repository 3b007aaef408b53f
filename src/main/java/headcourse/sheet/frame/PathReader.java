package headcourse.sheet.frame;

import headcourse.geom.Path;
import java.util.List;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathHandler;
import org.apache.batik.parser.PathParser;

/** Reads the {@code d} of an SVG path. */
final class PathReader implements PathHandler {
  private final Outlines out;

  /** The control point that a smooth segment reflects, and the degree that it is valid for. */
  private double controlX;

  private double controlY;
  private int degree;

  private PathReader(Affine map) {
    out = new Outlines(map);
  }

  /**
   * The paths, one for each part.
   *
   * @throws IllegalArgumentException if the text is no path
   */
  static List<Path> read(String data, Affine map) {
    PathReader handler = new PathReader(map);
    PathParser parser = new PathParser();
    parser.setPathHandler(handler);
    try {
      parser.parse(data);
    } catch (ParseException e) {
      throw new IllegalArgumentException("not a path", e);
    }
    return handler.out.finished();
  }

  @Override
  public void startPath() {}

  @Override
  public void endPath() {}

  @Override
  public void movetoRel(float x, float y) {
    out.move(out.x() + x, out.y() + y);
    degree = 0;
  }

  @Override
  public void movetoAbs(float x, float y) {
    out.move(x, y);
    degree = 0;
  }

  @Override
  public void closePath() {
    out.close();
    degree = 0;
  }

  @Override
  public void linetoRel(float x, float y) {
    line(out.x() + x, out.y() + y);
  }

  @Override
  public void linetoAbs(float x, float y) {
    line(x, y);
  }

  @Override
  public void linetoHorizontalRel(float x) {
    line(out.x() + x, out.y());
  }

  @Override
  public void linetoHorizontalAbs(float x) {
    line(x, out.y());
  }

  @Override
  public void linetoVerticalRel(float y) {
    line(out.x(), out.y() + y);
  }

  @Override
  public void linetoVerticalAbs(float y) {
    line(out.x(), y);
  }

  private void line(double x, double y) {
    out.line(x, y);
    degree = 0;
  }

  private void cubic(double x1, double y1, double x2, double y2, double x, double y) {
    out.cubic(x1, y1, x2, y2, x, y);
    controlX = x2;
    controlY = y2;
    degree = 3;
  }

  private void quadratic(double x1, double y1, double x, double y) {
    double x0 = out.x();
    double y0 = out.y();
    out.cubic(
        x0 + (x1 - x0) * 2 / 3,
        y0 + (y1 - y0) * 2 / 3,
        x + (x1 - x) * 2 / 3,
        y + (y1 - y) * 2 / 3,
        x,
        y);
    controlX = x1;
    controlY = y1;
    degree = 2;
  }

  private double smoothX(int wanted) {
    return degree == wanted ? 2 * out.x() - controlX : out.x();
  }

  private double smoothY(int wanted) {
    return degree == wanted ? 2 * out.y() - controlY : out.y();
  }

  @Override
  public void curvetoCubicRel(float x1, float y1, float x2, float y2, float x, float y) {
    double u = out.x();
    double v = out.y();
    cubic(u + x1, v + y1, u + x2, v + y2, u + x, v + y);
  }

  @Override
  public void curvetoCubicAbs(float x1, float y1, float x2, float y2, float x, float y) {
    cubic(x1, y1, x2, y2, x, y);
  }

  @Override
  public void curvetoCubicSmoothRel(float x2, float y2, float x, float y) {
    double u = out.x();
    double v = out.y();
    cubic(smoothX(3), smoothY(3), u + x2, v + y2, u + x, v + y);
  }

  @Override
  public void curvetoCubicSmoothAbs(float x2, float y2, float x, float y) {
    cubic(smoothX(3), smoothY(3), x2, y2, x, y);
  }

  @Override
  public void curvetoQuadraticRel(float x1, float y1, float x, float y) {
    double u = out.x();
    double v = out.y();
    quadratic(u + x1, v + y1, u + x, v + y);
  }

  @Override
  public void curvetoQuadraticAbs(float x1, float y1, float x, float y) {
    quadratic(x1, y1, x, y);
  }

  @Override
  public void curvetoQuadraticSmoothRel(float x, float y) {
    quadratic(smoothX(2), smoothY(2), out.x() + x, out.y() + y);
  }

  @Override
  public void curvetoQuadraticSmoothAbs(float x, float y) {
    quadratic(smoothX(2), smoothY(2), x, y);
  }

  @Override
  public void arcRel(
      float rx, float ry, float turn, boolean large, boolean sweep, float x, float y) {
    arc(rx, ry, turn, large, sweep, out.x() + x, out.y() + y);
  }

  @Override
  public void arcAbs(
      float rx, float ry, float turn, boolean large, boolean sweep, float x, float y) {
    arc(rx, ry, turn, large, sweep, x, y);
  }

  /** From end points to a centre, SVG 1.1 appendix F.6.5. */
  private void arc(
      double wantedX,
      double wantedY,
      double turn,
      boolean large,
      boolean sweep,
      double x,
      double y) {
    double rx = Math.abs(wantedX);
    double ry = Math.abs(wantedY);
    double dx = (out.x() - x) / 2;
    double dy = (out.y() - y) / 2;
    if (rx < 1e-9 || ry < 1e-9 || Math.hypot(dx, dy) < 1e-9) {
      line(x, y);
      return;
    }
    double t = Math.toRadians(turn);
    double c = Math.cos(t);
    double s = Math.sin(t);
    double px = c * dx + s * dy;
    double py = -s * dx + c * dy;
    double grow = Math.sqrt(px * px / (rx * rx) + py * py / (ry * ry));
    if (grow > 1) {
      rx *= grow;
      ry *= grow;
    }
    double below = rx * rx * py * py + ry * ry * px * px;
    double f = Math.sqrt(Math.max(0, rx * rx * ry * ry / below - 1)) * (large == sweep ? -1 : 1);
    double qx = f * rx * py / ry;
    double qy = -f * ry * px / rx;
    double from = Math.atan2((py - qy) / ry, (px - qx) / rx);
    double to = Math.atan2((-py - qy) / ry, (-px - qx) / rx);
    double angle = to - from;
    if (sweep && angle < 0) {
      angle += 2 * Math.PI;
    } else if (!sweep && angle > 0) {
      angle -= 2 * Math.PI;
    }
    double cx = c * qx - s * qy + (out.x() + x) / 2;
    double cy = s * qx + c * qy + (out.y() + y) / 2;
    out.arc(cx, cy, rx, ry, t, from, angle);
    degree = 0;
  }
}
