package headcourse.testing;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.geom.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * How much of a page's height has nothing on it: the stretches of the drawing area, higher than
 * what parts one thing from the next, that no mark crosses. A panel's or a table's own border
 * covers nothing, for it may be drawn around a blank.
 */
public final class BlankHeight {
  /** What parts one thing from the next, mm. */
  private static final double PARTS = 10;

  /** Lines that are longer upright and as good as level or plumb are borders, mm. */
  private static final double BORDER = 60;

  private BlankHeight() {}

  /**
   * The share of the drawing area's height, 0 to 1.
   *
   * @param area where the drawing may lie
   */
  public static double share(Page page, Box area) {
    List<double[]> spans = new ArrayList<>();
    collect(page.marks(), spans);
    spans.sort((a, b) -> Double.compare(a[0], b[0]));
    double blank = 0;
    double covered = area.minY();
    for (double[] span : spans) {
      blank += blank(covered, Math.min(span[0], area.maxY()));
      covered = Math.max(covered, span[1]);
    }
    blank += blank(covered, area.maxY());
    return blank / area.height();
  }

  private static double blank(double from, double to) {
    return to - from > PARTS ? to - from : 0;
  }

  private static void collect(List<Mark> marks, List<double[]> spans) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group group) {
        if (group.role() != Mark.Role.FRAME) {
          collect(group.marks(), spans);
        }
      } else if (mark instanceof Mark.Label label) {
        add(LabelShape.bounds(label), spans);
      } else if (mark instanceof Mark.Fill fill) {
        add(fill.path().bounds(), spans);
      } else if (mark instanceof Mark.Stroke stroke) {
        Box b = stroke.path().bounds();
        boolean plumb = b.width() < 0.1;
        boolean around = stroke.path().edges().size() == 4 && b.width() > 2 * BORDER;
        if (b.height() < BORDER || !plumb && !around) {
          add(b, spans);
        }
      }
    }
  }

  private static void add(Box box, List<double[]> spans) {
    spans.add(new double[] {box.minY(), box.maxY()});
  }
}
