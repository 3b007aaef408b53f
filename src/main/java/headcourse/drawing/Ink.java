package headcourse.drawing;

import headcourse.geom.Box;
import headcourse.geom.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where ink lies on a page: the boxes of texts, and the lines. Fills do not count. */
public final class Ink {
  // A coarse grid of 16 × 16 cells, each 32 mm wide, that is laid over the plane again and again.
  private static final int CELL_BITS = 5;
  private static final int ROW_BITS = 4;
  private static final int ROW = 1 << ROW_BITS;

  private final List<Mark> waiting = new ArrayList<>();
  private final List<TextShape> texts = new ArrayList<>();
  private Cell[] cells;

  private static final class Cell {
    private final List<MarkShape> marks = new ArrayList<>();
  }

  /** An empty page. */
  public Ink() {}

  /** Takes note of a mark; it is measured when somebody asks, and on many pages nobody does. */
  void learn(Mark mark) {
    waiting.add(mark);
  }

  private void measure() {
    if (cells == null) {
      cells = new Cell[ROW * ROW];
    }
    for (Mark mark : waiting) {
      measure(mark);
    }
    waiting.clear();
  }

  private void measure(Mark mark) {
    if (mark instanceof Mark.Label label) {
      TextShape text = TextShape.of(label);
      texts.add(text);
      file(text);
    } else if (mark instanceof Mark.Stroke stroke) {
      file(LineShape.of(stroke));
    } else if (mark instanceof Mark.Group group) {
      group.marks().forEach(this::measure);
    } else if (mark instanceof Mark.Coloured coloured) {
      measure(coloured.mark());
    }
  }

  private void file(MarkShape what) {
    Box box = what.box();
    int x1 = last(box.minX(), box.maxX());
    int y1 = last(box.minY(), box.maxY());
    for (int x = cell(box.minX()); x <= x1; x++) {
      for (int y = cell(box.minY()); y <= y1; y++) {
        int at = at(x, y);
        if (cells[at] == null) {
          cells[at] = new Cell();
        }
        cells[at].marks.add(what);
      }
    }
  }

  // Rounded towards nought: the cells beside the axes are wider, but no place is out of order.
  private static int cell(double mm) {
    return (int) mm >> CELL_BITS;
  }

  // More cells than a row has would only be the same ones again.
  private static int last(double from, double to) {
    return Math.min(cell(to), cell(from) + ROW - 1);
  }

  private static int at(int x, int y) {
    return (x & ROW - 1) << ROW_BITS | y & ROW - 1;
  }

  /** Whether a convex quadrilateral and a margin around it hold neither text nor line. */
  public boolean free(List<Point> quad, double margin) {
    measure();
    Box box = Box.around(quad).grown(margin);
    int x1 = last(box.minX(), box.maxX());
    int y1 = last(box.minY(), box.maxY());
    for (int x = cell(box.minX()); x <= x1; x++) {
      for (int y = cell(box.minY()); y <= y1; y++) {
        Cell cell = cells[at(x, y)];
        if (cell != null && !free(cell, quad, box, margin)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean free(Cell cell, List<Point> quad, Box box, double margin) {
    for (MarkShape i : cell.marks) {
      if (i.box().overlaps(box) && i.touches(quad, box, margin)) {
        return false;
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
    for (TextShape t : texts) {
      if (t.box().overlaps(box)) {
        double[] part = t.covers(from, to, margin);
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
}
