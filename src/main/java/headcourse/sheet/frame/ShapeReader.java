package headcourse.sheet.frame;

import headcourse.geom.Box;
import headcourse.geom.Path;
import java.util.List;

/** Reads the outlines of basic shapes and paths. */
final class ShapeReader {
  /** Farther out than this, mm, nothing is on a page. */
  private static final double LARGEST = 20000;

  private final Complaints complaints;

  ShapeReader(Complaints complaints) {
    this.complaints = complaints;
  }

  /** The paths of a shape, mapped to the reference page; none where it has no size. */
  List<Path> read(Node node, Affine map) {
    List<Path> paths = outline(node, map);
    for (Path p : paths) {
      Box b = p.bounds();
      if (Math.max(-Math.min(b.minX(), b.minY()), Math.max(b.maxX(), b.maxY())) > LARGEST) {
        complaints.error(node.offset(), "larger than any page", "coordinates in millimetres");
        return List.of();
      }
    }
    return paths;
  }

  private List<Path> outline(Node node, Affine map) {
    Outlines out = new Outlines(map);
    switch (node.name()) {
      case "rect" -> rect(node, out);
      case "line" -> {
        out.move(number(node, "x1"), number(node, "y1"));
        out.line(number(node, "x2"), number(node, "y2"));
      }
      case "polyline", "polygon" -> points(node, out);
      case "circle" -> {
        double r = number(node, "r");
        ellipse(node, r, r, out);
      }
      case "ellipse" -> ellipse(node, number(node, "rx"), number(node, "ry"), out);
      default -> {
        return path(node, map);
      }
    }
    return out.finished();
  }

  private double number(Node node, String name) {
    return Quantity.of(node, name, complaints, 0);
  }

  private void rect(Node node, Outlines out) {
    double x = number(node, "x");
    double y = number(node, "y");
    double w = number(node, "width");
    double h = number(node, "height");
    double rx = number(node, "rx");
    double ry = number(node, "ry");
    if (w <= 0 || h <= 0) {
      return;
    }
    rx = Math.min(rx > 0 ? rx : ry, w / 2);
    ry = Math.min(ry > 0 ? ry : rx, h / 2);
    boolean round = rx > 0 && ry > 0;
    out.move(x + rx, y);
    out.line(x + w - rx, y);
    corner(round, x + w - rx, y + ry, rx, ry, -Math.PI / 2, out);
    out.line(x + w, y + h - ry);
    corner(round, x + w - rx, y + h - ry, rx, ry, 0, out);
    out.line(x + rx, y + h);
    corner(round, x + rx, y + h - ry, rx, ry, Math.PI / 2, out);
    out.line(x, y + ry);
    corner(round, x + rx, y + ry, rx, ry, Math.PI, out);
    out.close();
  }

  private static void corner(
      boolean round, double x, double y, double rx, double ry, double from, Outlines out) {
    if (round) {
      out.arc(x, y, rx, ry, 0, from, Math.PI / 2);
    }
  }

  private void ellipse(Node node, double rx, double ry, Outlines out) {
    if (rx > 0 && ry > 0) {
      double cx = number(node, "cx");
      double cy = number(node, "cy");
      out.move(cx + rx, cy);
      out.arc(cx, cy, rx, ry, 0, 0, 2 * Math.PI);
      out.close();
    }
  }

  private void points(Node node, Outlines out) {
    List<String> list = Quantity.list(node.get("points", ""));
    if (list.size() < 4 || list.size() % 2 != 0) {
      complaints.error(node.at("points"), "not a list of points", "points=\"0,0 10,0 10,5\"");
      return;
    }
    for (int i = 0; i < list.size(); i += 2) {
      Double x = Quantity.parse(list.get(i));
      Double y = Quantity.parse(list.get(i + 1));
      if (x == null || y == null) {
        complaints.error(
            node.at("points"), "not a point: " + list.get(i) + "," + list.get(i + 1), "10,12.5");
        return;
      }
      if (i == 0) {
        out.move(x, y);
      } else {
        out.line(x, y);
      }
    }
    if (node.name().equals("polygon")) {
      out.close();
    }
  }

  private List<Path> path(Node node, Affine map) {
    String d = node.get("d", "");
    if (d.isBlank()) {
      return List.of();
    }
    try {
      return PathReader.read(d, map);
    } catch (IllegalArgumentException e) {
      complaints.error(node.at("d"), "not a path", "d=\"M 0 0 L 10 10\"");
      return List.of();
    }
  }
}
