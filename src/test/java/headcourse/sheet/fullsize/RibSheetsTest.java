package headcourse.sheet.fullsize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.PageSet;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.sheet.WatchedFrame;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ribs are measured on the finished pages. */
class RibSheetsTest {
  private static ShopWork work(String shape, double width, Double rise) {
    JobMaker m = JobMaker.one();
    m.first().shape = shape;
    m.first().key = shape.equals("soldier") ? m.first().key : null;
    m.first().width = Length.inches(width);
    m.first().headHeight = Length.inches(8);
    m.first().min = Length.inches(2);
    m.first().max = Length.inches(12);
    m.first().target = Length.inches(5);
    m.first().clear = Length.inches(1);
    if (rise != null) {
      m.first().params.put("rise", Length.inches(rise));
    }
    var outcome = WorkUp.of(m.make());
    return outcome.value().orElseThrow(() -> new AssertionError(outcome.diagnostics()));
  }

  /** A circle through three places. */
  private static double radius(Point a, Point b, Point c) {
    double area = Math.abs(b.minus(a).cross(c.minus(a))) / 2;
    return a.distance(b) * b.distance(c) * c.distance(a) / (4 * area);
  }

  /** Every arc that the rib's tiles show has the radius, and no tile is empty. */
  private static void measured(ShopWork work, double radius) {
    WatchedFrame frame = new WatchedFrame(Frame.plain());
    PageSet set = SheetBook.compose(work, Bundle.FULL_SIZE, frame);
    assertEquals(List.of(), frame.faults(set.pages()));
    int tiles = 0;
    for (var page : set.pages()) {
      if (!page.label().contains("-rib-")) {
        continue;
      }
      tiles++;
      List<Path> runs = curves(page.marks());
      assertTrue(!runs.isEmpty(), page.label() + " is empty");
      for (Path run : runs) {
        List<Point> all = run.vertices(0.001);
        Point a = all.get(0);
        Point c = all.get(all.size() - 1);
        if (a.distance(c) > 100) {
          double r = radius(a, all.get(all.size() / 2), c);
          assertEquals(radius, r, radius * 1e-3, page.label());
        }
      }
    }
    assertTrue(tiles > 1, "tiles " + tiles);
  }

  private static List<Path> curves(List<Mark> marks) {
    List<Path> found = new ArrayList<>();
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        found.addAll(
            g.title().startsWith("Centring rib")
                ? g.marks().stream().map(k -> ((Mark.Stroke) k).path()).toList()
                : curves(g.marks()));
      }
    }
    return found;
  }

  /** Definition: half the span less 3/4 in of lagging. */
  @Test
  void semicircle() {
    measured(work("semicircular", 48, null), (24 - 0.75) * 25.4);
  }

  /** A mason's published job, 2010: 44⅝ × 3, R 84.475; less 3/4 in. */
  @Test
  void segment() {
    measured(work("segmental", 44.625, 3.0), (84.475 - 0.75) * 25.4);
  }

  /** Two arcs of a radius as long as the span cross on the centre line, less the lagging each. */
  @Test
  void pointed() {
    ShopWork work = work("pointed", 48, null);
    Rib rib = Rib.of(work.heads().get(0), 19.05).orElseThrow();
    Point crown = rib.curve().start();
    double r = 48 * 25.4 - 19.05;
    assertEquals(0, crown.x(), 1e-6);
    assertEquals(Math.sqrt(r * r - 24 * 25.4 * 24 * 25.4), crown.y(), 0.05);
    assertTrue(rib.ticks().size() > 4, "joints are marked");
  }

  @Test
  void levelSoffitsHaveNone() {
    PageSet set = SheetBook.compose(work("soldier", 96, null), Bundle.FULL_SIZE, Frame.plain());
    assertTrue(set.pages().stream().noneMatch(p -> p.label().contains("-rib-")));
  }
}
