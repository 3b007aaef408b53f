package headcourse.stock.cutting;

import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * A part as it lies on a blank: its soffit along the arris, its left end at 0, millimetres.
 *
 * @param vertices of the outline, counter-clockwise, y from 0 up
 */
public record Profile(List<Point> vertices) {
  /** Copies the vertices. */
  public Profile {
    vertices = List.copyOf(vertices);
  }

  /** A rectangle. */
  public static Profile rectangle(double width, double height) {
    return new Profile(
        List.of(
            new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height)));
  }

  /**
   * An outline turned until the line between the ends of its soffit is level.
   *
   * @param outline the outline
   * @param along from the soffit's left end to its right end; null where it has none
   */
  public static Profile of(Path outline, Vec along) {
    double angle = along == null ? 0 : along.angle();
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    List<Point> turned = new ArrayList<>();
    for (Point p : outline.vertices(Tolerance.VERTEX)) {
      turned.add(Math.abs(s) < 1e-12 ? p : new Point(p.x() * c + p.y() * s, p.y() * c - p.x() * s));
    }
    return settled(turned);
  }

  private static Profile settled(List<Point> points) {
    double x = points.stream().mapToDouble(Point::x).min().orElseThrow();
    double y = points.stream().mapToDouble(Point::y).min().orElseThrow();
    return new Profile(points.stream().map(p -> new Point(p.x() - x, p.y() - y)).toList());
  }

  /** Turned end for end: half a turn about the square to its face. */
  Profile turned() {
    return settled(vertices.stream().map(p -> new Point(0 - p.x(), 0 - p.y())).toList());
  }

  /** Whether it is a rectangle. */
  boolean square() {
    double w = extent();
    double h = height();
    return vertices.stream()
        .allMatch(v -> (v.x() < 1e-6 || v.x() > w - 1e-6) && (v.y() < 1e-6 || v.y() > h - 1e-6));
  }

  /** Length along the blank. */
  public double extent() {
    return vertices.stream().mapToDouble(Point::x).max().orElseThrow();
  }

  /** Length of the rectangle of the same height and area. */
  public double meanWidth() {
    double twice = 0;
    for (int i = 0; i < vertices.size(); i++) {
      Point a = vertices.get(i);
      Point b = vertices.get((i + 1) % vertices.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice / 2 / height();
  }

  /** Full height. */
  public double height() {
    return vertices.stream().mapToDouble(Point::y).max().orElseThrow();
  }

  /** Where the part begins at a height, or NaN above it. */
  public double left(double y) {
    return side(y, -1);
  }

  /** Where the part ends at a height, or NaN above it. */
  public double right(double y) {
    return side(y, 1);
  }

  private double side(double y, int sign) {
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < vertices.size(); i++) {
      Point a = vertices.get(i);
      Point b = vertices.get((i + 1) % vertices.size());
      double low = Math.min(a.y(), b.y()) - Tolerance.SAME;
      double high = Math.max(a.y(), b.y()) + Tolerance.SAME;
      if (y < low || y > high) {
        continue;
      }
      if (Math.abs(a.y() - b.y()) <= Tolerance.SAME) {
        best = Math.max(best, Math.max(sign * a.x(), sign * b.x()));
      } else {
        double t = Math.max(0, Math.min(1, (y - a.y()) / (b.y() - a.y())));
        best = Math.max(best, sign * (a.x() + t * (b.x() - a.x())));
      }
    }
    return best == Double.NEGATIVE_INFINITY ? Double.NaN : sign * best;
  }

  /** 1/cos of the steepest rake on the right (sign 1) or left (sign −1) side. */
  private double slant(int sign) {
    double most = 1;
    for (int i = 0; i < vertices.size(); i++) {
      Vec v = vertices.get((i + 1) % vertices.size()).minus(vertices.get(i));
      // Counter-clockwise, so the right side climbs and the left side falls.
      if (v.y() * sign > Tolerance.SAME && Math.abs(v.y()) > Math.abs(v.x())) {
        most = Math.max(most, v.length() / Math.abs(v.y()));
      }
    }
    return most;
  }

  /**
   * Least distance from this part's left end to the next one's: the largest overlap over the height
   * that both have, plus what the saw takes, measured along the blank.
   */
  double distanceTo(Profile next, double kerf) {
    double top = Math.min(height(), next.height());
    double overlap = Double.NEGATIVE_INFINITY;
    for (Profile p : List.of(this, next)) {
      for (Point v : p.vertices) {
        if (v.y() <= top + Tolerance.SAME) {
          overlap = Math.max(overlap, right(v.y()) - next.left(v.y()));
        }
      }
    }
    overlap = Math.max(overlap, right(top) - next.left(top));
    return overlap + kerf * Math.max(slant(1), next.slant(-1));
  }
}
