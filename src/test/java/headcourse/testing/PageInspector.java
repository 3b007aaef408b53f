package headcourse.testing;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Overlap;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Looks a page over as a draughtsman would: text on text, text on a line, text off the page, lines
 * too thin, lettering too small, figures broken over two lines. Works from glyph boxes, not from
 * pixels.
 */
public final class PageInspector {
  private PageInspector() {}

  /** Text may touch nothing by more than this, mm. */
  private static final double TOUCH = 0.05;

  private static final double CELL = 10;

  private record Text(Mark.Label label, List<Point> corners, Box bounds) {}

  private record Line(Point from, Point to, Box bounds, double half) {}

  /** What is wrong with a page, one line each; empty where nothing is. */
  public static List<String> faults(Page page) {
    List<Text> texts = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    collect(page.marks(), texts, lines, faults);
    Box paper = new Box(0, 0, page.width(), page.height());
    Map<Long, List<Line>> linesIn = new HashMap<>();
    for (Line l : lines) {
      for (long key : cells(l.bounds)) {
        linesIn.computeIfAbsent(key, k -> new ArrayList<>()).add(l);
      }
    }
    for (int i = 0; i < texts.size(); i++) {
      Text a = texts.get(i);
      if (!paper.contains(a.bounds)) {
        faults.add(say(page, a) + " leaves the page");
      }
      if (a.label.lettering().height() < 2.5 - 1e-9) {
        faults.add(say(page, a) + " is smaller than 2.5 mm");
      }
      for (int j = i + 1; j < texts.size(); j++) {
        Text b = texts.get(j);
        if (a.bounds.overlaps(b.bounds) && Overlap.depth(a.corners, b.corners) > TOUCH) {
          faults.add(say(page, a) + " lies on " + say(page, b));
        }
      }
      Line hit = hit(a, linesIn);
      if (hit != null) {
        faults.add(
            String.format(
                Locale.ROOT,
                "%s lies on a line %.1f,%.1f – %.1f,%.1f",
                say(page, a),
                hit.from.x(),
                hit.from.y(),
                hit.to.x(),
                hit.to.y()));
      }
    }
    return faults;
  }

  private static Line hit(Text a, Map<Long, List<Line>> linesIn) {
    for (long key : cells(a.bounds)) {
      for (Line l : linesIn.getOrDefault(key, List.of())) {
        if (a.bounds.overlaps(l.bounds)
            && Overlap.depth(a.corners, l.from, l.to) + l.half > TOUCH) {
          return l;
        }
      }
    }
    return null;
  }

  // The cells of a coarse grid that a box touches.
  private static List<Long> cells(Box box) {
    List<Long> keys = new ArrayList<>();
    for (long x = (long) Math.floor(box.minX() / CELL); x <= box.maxX() / CELL; x++) {
      for (long y = (long) Math.floor(box.minY() / CELL); y <= box.maxY() / CELL; y++) {
        keys.add(x * 100_000 + y);
      }
    }
    return keys;
  }

  private static String say(Page page, Text t) {
    return String.format(
        Locale.ROOT,
        "%s: \"%s\" at %.1f,%.1f",
        page.label(),
        t.label.text(),
        t.label.at().x(),
        t.label.at().y());
  }

  // A figure over two lines of a table: 85 15/1 is read, and the 6 below it is not.
  private static void broken(List<Mark> cell, List<String> faults) {
    String before = "";
    for (Mark mark : cell) {
      if (mark instanceof Mark.Label label) {
        if (before.matches(".*[0-9]/?") && label.text().matches("/?[0-9\"'].*")) {
          faults.add("a figure is broken: " + before + " | " + label.text());
        }
        before = label.text();
      }
    }
  }

  private static void collect(
      List<Mark> marks, List<Text> texts, List<Line> lines, List<String> faults) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group group) {
        if (group.role() == Mark.Role.CELL) {
          broken(group.marks(), faults);
        }
        collect(group.marks(), texts, lines, faults);
      } else if (mark instanceof Mark.Coloured coloured) {
        collect(List.of(coloured.mark()), texts, lines, faults);
      } else if (mark instanceof Mark.Label label) {
        List<Point> corners = LabelShape.corners(label);
        texts.add(new Text(label, corners, Box.around(corners)));
      } else if (mark instanceof Mark.Stroke stroke) {
        if (stroke.pen().width() < 0.18 - 1e-9) {
          faults.add("a line of " + stroke.pen().width() + " mm is too thin");
        }
        Point last = stroke.path().start();
        for (Edge e : stroke.path().edges()) {
          for (Point p : e.flattened(Tolerance.PAPER)) {
            double half = stroke.pen().width() / 2;
            lines.add(new Line(last, p, Box.around(List.of(last, p)).grown(half + 1e-9), half));
            last = p;
          }
        }
      }
    }
  }
}
