package headcourse.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark.Align;
import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.Overlap;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whether a place is free of ink, held against every text and every line of the page. */
class InkTest {
  @Test
  void freeIsWhatNeitherTextNorLineComesNear() {
    int free = 0;
    int asked = 0;
    for (int seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      List<Mark> marks = new ArrayList<>();
      Ink ink = new Ink();
      for (int i = 0; i < 40; i++) {
        Mark mark = mark(random);
        marks.add(mark);
        ink.learn(mark);
        Mark.Label asking = label(random);
        double margin = random.nextDouble();
        List<Point> quad = LabelShape.corners(asking);
        boolean clear = marks.stream().noneMatch(m -> touches(m, quad, margin));
        assertEquals(clear, ink.free(quad, margin), "seed " + seed + ", mark " + i);
        free += clear ? 1 : 0;
        asked++;
      }
    }
    assertTrue(free > asked / 10 && free < asked * 9 / 10, free + " of " + asked + " free");
  }

  // Left of and above the origin too, where a head lies while its lettering is chosen.
  private static Point place(Random random) {
    return new Point(700 * random.nextDouble() - 150, 400 * random.nextDouble() - 200);
  }

  private static Mark.Label label(Random random) {
    Lettering lettering = new Lettering(random.nextBoolean() ? 14 : 3.5, random.nextBoolean());
    double turn = random.nextInt(3) == 0 ? 0 : 90 * random.nextDouble();
    Align align = Align.values()[random.nextInt(3)];
    return new Mark.Label(place(random), "L" + random.nextInt(99), lettering, align, turn);
  }

  private static Mark mark(Random random) {
    Point at = place(random);
    return switch (random.nextInt(4)) {
      case 0 -> label(random);
      case 1 -> new Mark.Stroke(Path.circle(at, 1 + 80 * random.nextDouble()), Pen.CUT);
      case 2 -> {
        double sweep = 12 * random.nextDouble() - 6;
        Arc arc = new Arc(at, 10 + 300 * random.nextDouble(), 6 * random.nextDouble(), sweep);
        yield new Mark.Stroke(new Path(List.of(arc), false), Pen.OUTLINE);
      }
      default -> new Mark.Stroke(Path.through(at, place(random)), Pen.FINE);
    };
  }

  private static boolean touches(Mark mark, List<Point> quad, double margin) {
    if (mark instanceof Mark.Label l) {
      return Overlap.depth(quad, LabelShape.corners(l)) > -margin;
    }
    Mark.Stroke stroke = (Mark.Stroke) mark;
    double half = stroke.pen().width() / 2;
    Point last = stroke.path().start();
    for (Edge edge : stroke.path().edges()) {
      for (Point p : edge.flattened(Tolerance.PAPER)) {
        if (Overlap.depth(quad, last, p) > -margin - half) {
          return true;
        }
        last = p;
      }
    }
    return false;
  }
}
