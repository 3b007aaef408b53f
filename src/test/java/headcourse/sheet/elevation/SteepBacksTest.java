package headcourse.sheet.elevation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The level marks of an arch stand clear of its back, also where that rises steeply. */
class SteepBacksTest {
  private static final double CLEAR = 0.45;

  private static ShopWork work(String shape) {
    JobMaker m = JobMaker.one();
    var o = m.first();
    o.shape = shape;
    o.width = Length.inches(48);
    o.headHeight = Length.inches(9);
    o.key = null;
    o.min = Length.inches(3);
    o.max = Length.inches(9);
    o.target = Length.inches(5);
    o.step = Length.ZERO;
    switch (shape) {
      case "segmental" -> o.params.put("rise", Length.inches(20));
      case "three-centred" -> o.params.put("rise", Length.inches(18));
      default -> {}
    }
    return WorkUp.of(m.make()).value().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"pointed", "segmental", "semicircular", "three-centred"})
  void noLeaderRunsAlongAStone(String shape) {
    Page page = SheetBook.compose(work(shape), Bundle.WALL, Frame.plain()).pages().get(0);
    List<Mark> marks = new ArrayList<>();
    flat(page.marks(), marks);
    List<Point> backs = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.Fill f && Math.abs(f.path().area()) > 20) {
        backs.addAll(f.path().vertices(0.05));
      }
    }
    int leaders = 0;
    List<String> faults = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.Stroke s && s.path().vertices(0.1).size() == 2) {
        Point a = s.path().vertices(0.1).get(0);
        Point b = s.path().vertices(0.1).get(1);
        boolean up = Math.abs(a.x() - b.x()) < 0.01 && a.y() - b.y() > 12;
        if (!up || s.pen().width() > 0.2) {
          continue;
        }
        leaders++;
        for (Point p : backs) {
          if (p.y() < a.y() - 0.1 && p.y() > b.y() && Math.abs(p.x() - a.x()) < CLEAR) {
            faults.add("the leader at " + a + " runs along " + p);
            break;
          }
        }
      }
    }
    assertTrue(leaders > 5, "only " + leaders + " leaders");
    assertEquals(List.of(), faults);
  }

  private static void flat(List<Mark> from, List<Mark> to) {
    for (Mark m : from) {
      if (m instanceof Mark.Group g) {
        flat(g.marks(), to);
      } else {
        to.add(m);
      }
    }
  }
}
