package headcourse.sheet;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark;
import headcourse.geom.Box;
import headcourse.geom.Overlap;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where ink lies on a page: the boxes of texts, and the lines. Fills do not count. */
public final class Ink {
  private record Text(Box bounds, List<Point> corners) {}

  private record Line(Box bounds, Point from, Point to, double half) {}

  private static final double CELL = 8;

  private final List<Mark> waiting = new ArrayList<>();
  private final List<Text> texts = new ArrayList<>();
  private final Map<Long, List<Text>> textsIn = new HashMap<>();
  private final Map<Long, List<Line>> linesIn = new HashMap<>();

  /** An empty page. */
  public Ink() {}

  /** Takes note of a mark; it is measured when somebody asks, and on many pages nobody does. */
  void learn(Mark mark) {
    waiting.add(mark);
  }

  private void measure() {
    for (Mark mark : waiting) {
      measure(mark);
    }
    waiting.clear();
  }

  private void measure(Mark mark) {
    if (mark instanceof Mark.Label label) {
      List<Point> corners = LabelShape.corners(label);
      Text t = new Text(Box.around(corners), corners);
      texts.add(t);
      file(textsIn, t.bounds, t);
    } else if (mark instanceof Mark.Stroke stroke) {
      Point last = stroke.path().start();
      double half = stroke.pen().width() / 2;
      for (var edge : stroke.path().edges()) {
        for (Point p : edge.flattened(Tolerance.PAPER)) {
          Line l = new Line(Box.around(List.of(last, p)).grown(half + 1e-9), last, p, half);
          file(linesIn, l.bounds, l);
          last = p;
        }
      }
    } else if (mark instanceof Mark.Group group) {
      group.marks().forEach(this::measure);
    } else if (mark instanceof Mark.Coloured coloured) {
      measure(coloured.mark());
    }
  }

  // A coarse grid over the page: only its cells' lists are read, by key, never their order.
  private static <T> void file(Map<Long, List<T>> grid, Box box, T what) {
    for (long key : cells(box)) {
      List<T> there = grid.get(key);
      if (there == null) {
        there = new ArrayList<>();
        grid.put(key, there);
      }
      there.add(what);
    }
  }

  private static long[] cells(Box box) {
    long x0 = (long) Math.floor(box.minX() / CELL);
    long x1 = (long) Math.floor(box.maxX() / CELL);
    long y0 = (long) Math.floor(box.minY() / CELL);
    long y1 = (long) Math.floor(box.maxY() / CELL);
    long[] keys = new long[(int) ((x1 - x0 + 1) * (y1 - y0 + 1))];
    int n = 0;
    for (long x = x0; x <= x1; x++) {
      for (long y = y0; y <= y1; y++) {
        keys[n++] = (x << 32) ^ (y & 0xffffffffL);
      }
    }
    return keys;
  }

  /** Whether a convex quadrilateral and a margin around it hold neither text nor line. */
  public boolean free(List<Point> quad, double margin) {
    measure();
    Box box = Box.around(quad).grown(margin);
    for (long key : cells(box)) {
      for (Text t : textsIn.getOrDefault(key, List.of())) {
        if (t.bounds.overlaps(box) && Overlap.depth(quad, t.corners) > -margin) {
          return false;
        }
      }
      for (Line l : linesIn.getOrDefault(key, List.of())) {
        if (l.bounds.overlaps(box) && Overlap.depth(quad, l.from, l.to) > -margin - l.half) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * The parts of a segment that run clear of text.
   *
   * @param margin air that is kept around each text, mm
   * @return pairs of ends, from the segment's start on
   */
  List<Point[]> clearOfText(Point from, Point to, double margin) {
    measure();
    List<double[]> taken = new ArrayList<>();
    Box box = Box.around(List.of(from, to)).grown(margin + 1e-9);
    for (Text t : texts) {
      if (t.bounds.overlaps(box)) {
        double[] part = inside(t.corners, from, to, margin);
        if (part[1] > part[0]) {
          taken.add(part);
        }
      }
    }
    taken.sort(Comparator.comparingDouble(p -> p[0]));
    List<Point[]> parts = new ArrayList<>();
    double at = 0;
    for (double[] part : taken) {
      if (part[0] > at) {
        parts.add(new Point[] {from.towards(to, at), from.towards(to, part[0])});
      }
      at = Math.max(at, part[1]);
    }
    if (at < 1) {
      parts.add(new Point[] {from.towards(to, at), to});
    }
    return parts;
  }

  // Which part 0 … 1 of a segment lies in a convex quadrilateral grown by a margin.
  private static double[] inside(List<Point> quad, Point from, Point to, double margin) {
    double turn = Math.signum(Path.polygon(quad).area());
    double low = 0;
    double high = 1;
    for (int i = 0; i < quad.size(); i++) {
      Vec side = quad.get((i + 1) % quad.size()).minus(quad.get(i));
      if (side.length() < 1e-9) {
        continue;
      }
      Vec in = side.normal().unit().times(turn);
      double a = in.dot(from.minus(quad.get(i))) + margin;
      double b = in.dot(to.minus(quad.get(i))) + margin;
      if (a < 0 && b < 0) {
        return new double[] {0, 0};
      }
      if (a < 0) {
        low = Math.max(low, a / (a - b));
      } else if (b < 0) {
        high = Math.min(high, a / (a - b));
      }
    }
    return new double[] {low, high};
  }
}
