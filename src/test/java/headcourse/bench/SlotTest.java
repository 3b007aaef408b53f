package headcourse.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Job;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SlotTest {
  /**
   * Worked by hand on a triangle of 3, 4, 5: mouth ¾, run 1, blade 4½; bed and scratch coat ½ each.
   * Chord 1¼, slant 36.870°; bulge 2.25 − √(2.25² − 0.625²) = 0.088548; plunge 0.6 + 0.088548; the
   * arc falls away from the mouth. A 4½ in screw: (4.5 − 1.25) × 0.6 − 1 = 0.95 into what holds.
   */
  @Test
  void workedByHand() {
    Slot slot = new Slot(Length.inches(0.75), Length.inches(1), 2.25 * 25.4);
    assertEquals(36.870, slot.slant().degrees(), 5e-4);
    assertEquals(1.25, slot.chord() / 25.4, 1e-9);
    assertEquals(0.088548, slot.bulge() / 25.4, 1e-6);
    assertEquals(0.688548, slot.plunge() / 25.4, 1e-6);
    assertEquals(0.75, slot.highest() / 25.4, 1e-9);
    ScrewChooser screws = new ScrewChooser(JobMaker.one().make().fastener());
    ScrewChooser.Screw none = screws.choose(slot, Length.inches(1));
    assertNull(none.length());
    assertEquals(0.95, none.penetration().inches(), 1e-9);
    // With nothing between 3½ reaches 1.35; 3 reaches 1.05, which is enough, and 2½ only 0.75.
    assertEquals(Length.inches(3), screws.choose(slot, Length.ZERO).length());
  }

  /** The highest place of the arc and its plunge, against places all along it. */
  @Test
  void arcAgainstItsPlaces() {
    Random random = new Random(7);
    for (int n = 0; n < 2000; n++) {
      double a = 3 + 30 * random.nextDouble();
      double e = 3 + 30 * random.nextDouble();
      double r = Math.hypot(a, e) * (0.51 + 3 * random.nextDouble());
      Slot slot = new Slot(Length.mm(a), Length.mm(e), r);
      double c = Math.hypot(a, e);
      double d = Math.sqrt(r * r - c * c / 4);
      double cx = e / 2 - a / c * d;
      double cz = a / 2 - e / c * d;
      double from = Math.atan2(0 - cz, e - cx);
      double to = Math.atan2(a - cz, 0 - cx);
      if (to < from) {
        to += 2 * Math.PI;
      }
      double highest = 0;
      double deepest = 0;
      for (int i = 0; i <= 4000; i++) {
        double u = from + (to - from) * i / 4000;
        double x = cx + r * Math.cos(u);
        double z = cz + r * Math.sin(u);
        highest = Math.max(highest, z);
        deepest = Math.max(deepest, (x * a + z * e) / c);
      }
      assertEquals(highest, slot.highest(), 1e-4, "case " + n);
      assertEquals(deepest, slot.plunge(), 1e-4, "case " + n);
    }
  }

  /**
   * Stone 1¼, cover ⅜, bed, scratch coat and sheathing ½ each, embedment 1, screws 2 to 4½: 4 is
   * the shortest that reaches from behind a third of the stone. By hand, mouth 5/8, as much stone
   * before as behind: run 1/2: c = 0.800391, sin α = 0.780869, (4 − c) sin α − 1.5 = 0.998476,
   * short; run 7/16: c = 0.762910, sin α = 0.819232, 1.151928.
   */
  @Test
  void choosesTheShortestScrewThenTheMiddle() {
    Job job = JobMaker.one().make();
    SlotChooser.Choice c =
        new SlotChooser(job)
            .choose(
                new SlotChooser.Bounds(
                    Length.inches(1.25),
                    new AnchorFinder(job).idle(Length.ZERO),
                    Length.inches(1.25),
                    Length.inches(2)))
            .orElseThrow();
    assertEquals(Length.inches(4), c.screw().length());
    assertEquals(Length.inches(5 / 8.0), c.slot().mouth());
    assertEquals(Length.inches(7 / 16.0), c.slot().run());
    assertEquals(1.151928, c.screw().penetration().inches(), 1e-6);
    assertEquals(Length.inches(5 / 8.0), c.cover());
  }

  /** No screw at hand is long enough in a thick bed: said, with what the longest reaches. */
  @Test
  void saysWhenNoneReaches() {
    Job job = JobMaker.one().make();
    SlotChooser.Choice c =
        new SlotChooser(job)
            .choose(
                new SlotChooser.Bounds(
                    Length.inches(1.25),
                    new AnchorFinder(job).idle(Length.inches(2)),
                    Length.inches(1.25),
                    Length.inches(2)))
            .orElseThrow();
    assertNull(c.screw().length());
    assertTrue(c.screw().penetration().compareTo(job.fastener().embedment()) < 0);
    assertTrue(c.cover().compareTo(job.fastener().cover()) >= 0);
  }
}
