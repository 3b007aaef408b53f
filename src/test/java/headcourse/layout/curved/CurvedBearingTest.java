package headcourse.layout.curved;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import org.junit.jupiter.api.Test;

/**
 * How far curved heads bear, worked out by hand: the end stone's edge lies half a joint inside the
 * line through the springing, and ends on the extrados.
 */
class CurvedBearingTest {
  private static HeadLayout head(String shape, double width, double depth, double joint) {
    JobMaker m = CurvedJobs.of(shape, width, depth);
    if (joint > 0) {
      CurvedJobs.mortar(m, joint);
    }
    if (shape.equals("segmental")) {
      m.first().params.put("rise", Length.inches(6));
    }
    return CurvedJobs.head(m);
  }

  private static void bears(double inches, HeadLayout head) {
    for (Side side : new Side[] {Side.LEFT, Side.RIGHT}) {
      assertEquals(inches, head.bearing(side).onWall().inches(), 1e-4, side.toString());
      assertEquals(head.bearing(side).onWall(), head.bearing(side).onTop());
      PlacedStone end = head.end(side);
      double outermost =
          end.outline().vertices(0.01).stream().mapToDouble(p -> Math.abs(p.x())).max().orElse(0);
      assertEquals(inches, (outermost - head.jamb(side).mm()) / 25.4, 1e-4, side.toString());
    }
  }

  /**
   * 48 × 6, depth 8: R 51, sin φ = 24/51. Dry, 59 sin φ − 24 = 3.7647; with joints of 3/8 the edge
   * is 3/16 inside it and meets the back at √(59² − (3/16)²) from the centre: 3.5991.
   */
  @Test
  void segmental() {
    bears(3.7647, head("segmental", 48, 8, 0));
    bears(3.5991, head("segmental", 48, 8, 0.375));
  }

  /** Span 60, depth 9, joint 1/4: √(39² − (1/8)²) − 30. */
  @Test
  void semicircular() {
    bears(9, head("semicircular", 60, 9, 0));
    bears(8.9998, head("semicircular", 60, 9, 0.25));
  }

  /** Equilateral over 42, depth 8, joint 1/4: arcs struck from the springings, √(50² − (1/8)²). */
  @Test
  void pointed() {
    bears(8, head("pointed", 42, 8, 0));
    bears(7.9998, head("pointed", 42, 8, 0.25));
  }
}
