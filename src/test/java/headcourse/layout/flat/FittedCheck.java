package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.layout.FaceEdge;
import headcourse.layout.HeadLayout;
import headcourse.layout.Jambs;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.List;
import java.util.Random;

/** What every head must hold, whatever was measured and fitted. */
final class FittedCheck {
  private FittedCheck() {}

  /** An opening a little out of everything. */
  static Measured measured(Length width, Random random) {
    Length head = random.nextInt(4) == 0 ? null : width.plus(some(random, 8));
    return new Measured(
        head,
        null,
        null,
        List.of(),
        random.nextBoolean() ? null : some(random, 6),
        random.nextBoolean() ? null : some(random, 6),
        random.nextInt(3) != 0 ? null : some(random, 6));
  }

  private static Length some(Random random, int mm) {
    return Length.inches(random.nextInt(2 * mm + 1) / 16.0 - mm / 16.0);
  }

  static void holds(Job job, HeadLayout head, String at) {
    HeadSpec h = head.opening().head();
    Jambs jambs = Jambs.of(head.opening());
    boolean jack = h.shape().equals("jack");
    double tick = job.grid().tick().mm();
    double slack = job.setting().joint().isZero() ? 1e-6 : tick * 0.501;
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Length wall = side == Side.LEFT ? head.opening().wallLeft() : head.opening().wallRight();
      double jamb = jambs.on(side).mm();
      Length bears = head.bearing(side).onWall();
      assertTrue(bears.compareTo(h.bearing().min()) >= 0, at + " " + bears);
      assertTrue(bears.compareTo(h.bearing().max()) <= 0, at + " " + bears);
      assertTrue(wall == null || bears.compareTo(wall) <= 0, at + " " + bears);
      boolean springs = jack && bears.compareTo(job.grid().tick()) < 0;
      for (PlacedStone s : head.stones()) {
        if (s.side() == side || s.side() == Side.CENTRE) {
          clear(s, side, jamb, h, jack, springs, slack, at + " " + s.mark());
        }
      }
    }
    boolean top = jack && h.params().word("divide").orElse("soffit").equals("top");
    for (PlacedStone s : head.stones()) {
      Fitted f =
          job.report().fitted().stream()
              .filter(x -> x.stone().equals(s.mark()))
              .findFirst()
              .orElse(null);
      assertEquals(f != null, s.fitted(), at + " " + s.mark());
      if (f != null) {
        assertEquals(f.bottom(), s.bottom(), at + " " + s.mark());
        var soffit = s.edges(FaceEdge.Where.SOFFIT);
        double chord = soffit.get(0).from().distance(soffit.get(soffit.size() - 1).to());
        // What is as printed may be rounded in print, where a raked edge meets mortar.
        assertEquals(f.bottom().mm(), chord, tick * 0.501, at + " " + s.mark());
      } else if (s.role() != Role.KEY && !passedOver(job, s)) {
        double w =
            top
                ? s.feet().rightTop().minus(s.feet().leftTop()).mm()
                : s.feet().rightSoffit().minus(s.feet().leftSoffit()).mm();
        assertTrue(w >= h.stones().min().mm() - slack - 1e-6, at + " " + s.mark() + " " + w);
        assertTrue(w <= h.stones().max().mm() + slack + 1e-6, at + " " + s.mark() + " " + w);
      }
    }
    neighboursMeet(job, head, at);
  }

  /** Not measured, but a stone farther out was, so that it counts as there. */
  private static boolean passedOver(Job job, PlacedStone s) {
    return job.report().fitted().stream()
        .anyMatch(
            f ->
                f.stone().charAt(0) == s.mark().charAt(0)
                    && !f.stone().equals("K")
                    && Integer.parseInt(f.stone().substring(1)) > s.index());
  }

  private static void clear(
      PlacedStone s,
      Side side,
      double jamb,
      HeadSpec h,
      boolean jack,
      boolean springs,
      double slack,
      String at) {
    for (boolean left : new boolean[] {true, false}) {
      boolean outer = left == (side == Side.LEFT);
      if (springs && outer && s.role() == Role.END || s.side() == Side.CENTRE && !outer) {
        continue;
      }
      double x = Math.abs((left ? s.feet().leftSoffit() : s.feet().rightSoffit()).mm());
      double t = Math.abs((left ? s.feet().leftTop() : s.feet().rightTop()).mm());
      assertTrue(Math.abs(x - jamb) >= h.clear().mm() - slack, at + " " + x + " " + jamb);
      assertTrue(jack || Math.abs(t - jamb) >= h.clear().mm() - slack, at + " top " + t);
    }
  }

  /** From each stone to the next it is a joint, square to itself, above and below. */
  private static void neighboursMeet(Job job, HeadLayout head, String at) {
    double joint = job.setting().joint().mm();
    for (int i = 0; i + 1 < head.stones().size(); i++) {
      var a = head.stones().get(i).edges(FaceEdge.Where.RIGHT).get(0);
      var b = head.stones().get(i + 1).edges(FaceEdge.Where.LEFT).get(0);
      var along = a.to().minus(a.from()).unit();
      for (var p : List.of(b.from(), b.to())) {
        double off = Math.abs(along.cross(p.minus(a.from())));
        assertEquals(joint, off, 1e-6, at + " beside " + head.stones().get(i).mark());
      }
    }
  }
}
