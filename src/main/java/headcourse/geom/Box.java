package headcourse.geom;

import java.util.List;

/**
 * A rectangle with its sides along the axes, in millimetres.
 *
 * @param minX least x
 * @param minY least y
 * @param maxX greatest x
 * @param maxY greatest y
 */
public record Box(double minX, double minY, double maxX, double maxY) {
  /** Refuses a box inside out. */
  public Box {
    if (!(minX <= maxX) || !(minY <= maxY)) {
      throw new IllegalArgumentException(
          "not a box: " + minX + ", " + minY + " … " + maxX + ", " + maxY);
    }
  }

  /** The least box around places. */
  public static Box around(List<Point> points) {
    double x0 = Double.POSITIVE_INFINITY;
    double y0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    double y1 = Double.NEGATIVE_INFINITY;
    for (Point p : points) {
      double x = p.x();
      double y = p.y();
      x0 = x < x0 ? x : x0;
      y0 = y < y0 ? y : y0;
      x1 = x > x1 ? x : x1;
      y1 = y > y1 ? y : y1;
    }
    return new Box(x0, y0, x1, y1);
  }

  /** A box from a corner and a size. */
  public static Box of(double x, double y, double width, double height) {
    return new Box(x, y, x + width, y + height);
  }

  /** Its width. */
  public double width() {
    return maxX - minX;
  }

  /** Its height. */
  public double height() {
    return maxY - minY;
  }

  /** Its middle. */
  public Point centre() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }

  /** Its corners, in order around it. */
  public List<Point> corners() {
    return List.of(
        new Point(minX, minY), new Point(maxX, minY), new Point(maxX, maxY), new Point(minX, maxY));
  }

  /** The box around both. */
  public Box union(Box o) {
    return new Box(
        Math.min(minX, o.minX),
        Math.min(minY, o.minY),
        Math.max(maxX, o.maxX),
        Math.max(maxY, o.maxY));
  }

  /** The box grown by a margin on every side. */
  public Box grown(double margin) {
    return new Box(minX - margin, minY - margin, maxX + margin, maxY + margin);
  }

  /** Whether the insides overlap. */
  public boolean overlaps(Box o) {
    return minX < o.maxX && o.minX < maxX && minY < o.maxY && o.minY < maxY;
  }

  /** Whether another box lies within this one. */
  public boolean contains(Box o) {
    return minX <= o.minX && minY <= o.minY && maxX >= o.maxX && maxY >= o.maxY;
  }
}
