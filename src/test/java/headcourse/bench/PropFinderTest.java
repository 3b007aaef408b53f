package headcourse.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Job;
import headcourse.job.Props;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.work.WorkUp;
import org.junit.jupiter.api.Test;

class PropFinderTest {
  private static final double KG_PER_M_OF_LB_PER_FT = 0.45359237 / 0.3048;

  private static Props plank(double thick, double wide, double lbPerIn2, double sag) {
    return new Props(
        Length.inches(thick),
        Length.inches(wide),
        lbPerIn2 * Props.LB_PER_IN2,
        Length.inches(sag),
        2,
        Length.inches(0.75));
  }

  /**
   * By hand, 5 q s⁴ / 384 E I: 35 lb/ft is 2.9167 lb/in; I = 5.5 · 1.5³/12 = 1.5469 in⁴; s⁴ = 384 ·
   * 1 200 000 · 1.5469 · (1/32) / (5 · 2.9167) = 1 527 429, s = 35.155 in.
   */
  @Test
  void spacingByHand() {
    Length s = PropFinder.spacing(plank(1.5, 5.5, 1_200_000, 1 / 32.0), 35 * KG_PER_M_OF_LB_PER_FT);
    assertEquals(35.155, s.inches(), 0.002);
  }

  /** A pound on a square inch is 0.006894757 N/mm² (NIST SP 811). */
  @Test
  void poundsOnASquareInch() {
    assertEquals(0.006894757, Props.LB_PER_IN2, 1e-9);
  }

  /**
   * The sag of a beam by integrating its moment q x (s − x)/2 twice, and not by the formula; at the
   * spacing printed it is within the job's, and a tick farther it is not.
   */
  private static double sag(Props p, double kgPerM, double s) {
    double q = kgPerM * 9.80665 / 1000;
    double ei = p.stiffness() * p.width().mm() * Math.pow(p.thickness().mm(), 3) / 12;
    int n = 4000;
    double dx = s / 2 / n;
    double middle = 0;
    // Slope is nought in the middle: what the end stands above it is the moment area about the end.
    for (int i = 0; i < n; i++) {
      double x = (i + 0.5) * dx;
      middle += q * x * (s - x) / 2 / ei * x * dx;
    }
    return middle;
  }

  @Test
  void printedSpacingHolds() {
    int limited = 0;
    for (long seed = 900; seed < 900 + Seeds.of(25); seed++) {
      Job job = RandomJobs.flat(seed).make();
      var work = WorkUp.of(job).value();
      if (work.isEmpty()) {
        continue;
      }
      for (HeadWork head : work.get().heads()) {
        PropPlan p = PropFinder.find(job, head).orElseThrow();
        double kg = head.pieces().stream().mapToDouble(Piece::hangingKg).sum();
        double wide = head.layout().jamb(Side.LEFT).mm() + head.layout().jamb(Side.RIGHT).mm();
        HeadLayout layout = head.layout();
        double ends =
            layout.curved()
                ? 0
                : layout.bearing(Side.LEFT).onWall().mm()
                    + layout.bearing(Side.RIGHT).onWall().mm();
        assertEquals(2 * kg / (wide + ends) * 1000, p.loadKgPerM(), 1e-9, "seed " + seed);
        double s = p.spacing().mm();
        Props props = job.props();
        assertTrue(sag(props, p.loadKgPerM(), s) <= props.sag().mm() * (1 + 1e-6), "seed " + seed);
        double tick = job.grid().tick().mm();
        if (s + tick < wide) {
          limited++;
          assertTrue(sag(props, p.loadKgPerM(), s + tick) > props.sag().mm() * (1 - 1e-6));
        }
        assertTrue((p.posts() - 1) * s >= wide - 1e-6, "seed " + seed);
        assertTrue(p.posts() == 2 || (p.posts() - 2) * s < wide, "seed " + seed);
        assertEquals(p.loadKgPerM() * s / 1000, p.postKg(), 1e-9);
      }
    }
    assertTrue(limited > 5, "only " + limited);
  }
}
