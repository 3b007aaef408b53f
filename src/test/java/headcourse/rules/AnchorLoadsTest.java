package headcourse.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.Anchor;
import headcourse.bench.EdgeName;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.job.Job;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import org.junit.jupiter.api.Test;

/** Figures of screws against an engineering reference page and a handbook's table. */
class AnchorLoadsTest {
  private static AnchorLoads loads(double shank, double gravity) {
    JobMaker maker = JobMaker.one();
    maker.shank = Length.inches(shank);
    Job job = maker.make();
    Notch n = PieceMaker.notch(EdgeName.OUTER, 7, 0.5, 0.5, Length.inches(4), 1, true, "L1");
    Backing wood = new Backing(null, Backing.Kind.WOOD, "", gravity);
    Anchor a =
        new Anchor(
            wood,
            Anchor.Hold.HOLDS,
            AnchorKind.WOOD_SCREW,
            Length.inches(4),
            Length.inches(1),
            Backing.Kind.WOOD,
            Length.inches(1),
            Length.inches(4));
    Notch held =
        new Notch(
            n.edge(),
            n.at(),
            n.height(),
            n.mouth(),
            n.run(),
            n.slant(),
            n.cover(),
            n.plunge(),
            a,
            true,
            "L1");
    Scene scene = new Scene();
    scene.each(p -> p.only(held));
    scene.each(p -> p.liftingKg = 10 / 2.20462262185);
    Piece piece = scene.heads(scene.make()).get(0).pieces().get(0);
    return AnchorLoads.of(job, piece, held);
  }

  /**
   * A number 10 screw (0.190 in) in wood of G 0.45 holds 109 lb an inch of thread (an engineering
   * reference page); thread in wood is what stands square to the wall over the sine: √2 at 45°.
   */
  @Test
  void withdrawalByThePublishedTable() {
    AnchorLoads l = loads(0.19, 0.45);
    assertEquals(Math.sqrt(2), l.threadMm() / 25.4, 1e-9);
    double perInch = l.withdrawalN() / 4.4482216152605 / Math.sqrt(2);
    assertEquals(109, perInch, 1);
    // G² of Douglas fir, southern pine and spruce (handbook Table 6.2).
    double[][] squares = {{0.51, 0.260}, {0.59, 0.348}, {0.41, 0.168}};
    for (double[] s : squares) {
      double w = loads(0.19, s[0]).withdrawalN() / 4.4482216152605 / Math.sqrt(2);
      assertEquals(s[1], w / (2850 * 0.19), 5e-4);
    }
  }

  /**
   * By hand: 10 lb on one screw at 45°, bed, scratch coat and sheathing 1/2 in each: 10 × 1.5 √2 =
   * 21.21 lb·in. Yield of a 0.190 in shank: 80 000 × 0.152³ / 6 = 46.82; of 0.170: 90 000 × 0.136³
   * / 6 = 37.73 (strengths from memory of the NDS).
   */
  @Test
  void bendingByHand() {
    double unit = 4.4482216152605 * 25.4;
    assertEquals(21.213, loads(0.19, 0.45).momentNmm() / unit, 1e-3);
    assertEquals(46.82, loads(0.19, 0.45).yieldNmm() / unit, 0.01);
    assertEquals(37.73, loads(0.17, 0.45).yieldNmm() / unit, 0.01);
    assertTrue(Double.isNaN(loads(0.5, 0.45).yieldNmm()));
    assertEquals(1, loads(0.19, 0.45).screws());
  }
}
