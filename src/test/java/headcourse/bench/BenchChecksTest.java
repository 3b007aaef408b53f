package headcourse.bench;

import static headcourse.bench.StoneMaker.at;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Job;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values from outside the project; the source stands beside each. */
class BenchChecksTest {
  private static final double LB_PER_FT3 = 0.45359237 / Math.pow(0.3048, 3);

  /** by arithmetic: 12 × 8 × 1¼ + (4 − 1¼) × 8 × 1¼ = 147.5 in³; at 165 lb/ft³ 14.08 lb. */
  @Test
  void volumeAndMassOfAnL() {
    JobMaker maker = JobMaker.one();
    maker.density = 165 * LB_PER_FT3;
    Job job = maker.make();
    Piece p =
        HeadBench.workUp(
                job,
                StoneMaker.head(
                    job, StoneMaker.quad("K", at(-4, 0), at(4, 0), at(4, 12), at(-4, 12))))
            .piece("K");
    assertEquals(147.5, p.mass().volumeM3() / Math.pow(0.0254, 3), 0.01);
    assertEquals(14.08, p.mass().kg() / 0.45359237, 0.01);
    assertEquals(6.389, p.mass().kg(), 0.01);
    // Moments about the soffit and the face, by hand: (120·6 + 27.5·0.625)/147.5 and
    // (120·0.625 + 27.5·2.625)/147.5.
    assertEquals(4.997881, p.mass().centre().y() / 25.4, 1e-6);
    assertEquals(0, p.mass().centre().x(), 1e-9);
    assertEquals(0.997881, p.mass().depth() / 25.4, 1e-6);
  }

  /**
   * plain geometry of a chord: a blade of radius 2.25 lowered so deep into a flat leaves a slot so
   * long. The slot whose arc bulges so far past its chord is looked for.
   */
  @ParameterizedTest
  @CsvSource({"0.75, 3.354", "1, 3.742", "1.25, 4.031"})
  void plungeSlot(double depth, double length) {
    double shorter = 0.01;
    double longer = 4.49;
    for (int i = 0; i < 60; i++) {
      double middle = (shorter + longer) / 2;
      Length leg = Length.inches(middle / Math.sqrt(2));
      boolean tooLong = new Slot(leg, leg, 2.25 * 25.4).bulge() > depth * 25.4;
      shorter = tooLong ? shorter : middle;
      longer = tooLong ? middle : longer;
    }
    assertEquals(length, shorter, 0.001);
  }

  /**
   * published woodworking formula for a four-sided frame whose boards slope 30° from the level:
   * mitre atan(cos 30° tan 45°) = 40.893°, tilt asin(sin 30° sin 45°) = 20.705°.
   */
  @Test
  void compoundMitre() {
    double slope = Math.toRadians(30);
    Direction board = new Direction(0, -Math.sin(slope), Math.cos(slope));
    Direction corner = new Direction(1, -1, 0);
    CompoundCut cut = CompoundCut.of(corner, board, new Direction(1, 0, 0));
    assertEquals(40.893, cut.mitre().degrees(), 0.001);
    assertEquals(20.705, cut.tilt().degrees(), 0.001);
  }

  /** The same formula for n sides and any slope: tan m = cos s tan(π/n), sin t = sin s sin(π/n). */
  @ParameterizedTest
  @CsvSource({"3, 10", "4, 52.5", "5, 30", "6, 45", "8, 75", "12, 5"})
  void compoundMitreOfAnySides(int sides, double slopeDegrees) {
    double s = Math.toRadians(slopeDegrees);
    double half = Math.PI / sides;
    Direction board = new Direction(0, -Math.sin(s), Math.cos(s));
    // The corner stands half the corner angle off the board's lower edge.
    Direction corner = new Direction(Math.cos(half), -Math.sin(half), 0);
    CompoundCut cut = CompoundCut.of(corner, board, new Direction(1, 0, 0));
    assertEquals(Math.atan(Math.cos(s) * Math.tan(half)), cut.mitre().radians(), 1e-12);
    assertEquals(Math.asin(Math.sin(s) * Math.sin(half)), cut.tilt().radians(), 1e-12);
  }

  /** A rake of 5/16 over 12, by arithmetic: atan(0.3125 / 12) = 1.4917°. */
  @Test
  void rakeAsOffsetOverHeight() {
    Job job = JobMaker.one().make();
    StoneFrame f =
        StoneFrame.of(StoneMaker.quad("R1", at(4, 0), at(11, 0), at(11.3125, 12), at(4.3125, 12)));
    Rake left = RakeFinder.rake(f, headcourse.layout.FaceEdge.Where.LEFT, job.grid());
    Rake right = RakeFinder.rake(f, headcourse.layout.FaceEdge.Where.RIGHT, job.grid());
    assertEquals(1.4917, right.offSquare().degrees(), 5e-5);
    assertEquals(Length.inches(5 / 16.0), right.offset());
    assertEquals(Length.inches(12), right.over());
    assertEquals(Rake.LongPoint.TOP, right.longPoint());
    assertEquals(Rake.LongPoint.BOTTOM, left.longPoint());
    // Diagonals by Pythagoras: 7.3125 and 6.6875 over 12.
    Measures m = Measures.of(f);
    assertEquals(14.052496, m.rising().inches(), 1e-6);
    assertEquals(13.737636, m.falling().inches(), 1e-6);
    assertEquals(12.004068, m.leftEdge().inches(), 1e-6);
    assertEquals(7.3125, m.extent().inches(), 1e-9);
  }

  /**
   * four-foot jack arch 12 deep by the ½-in-per-foot rule, skewback 26.565°, 6 in 12 (BIA Technical
   * Note 31A).
   */
  @Test
  void skewbackOffSquare() {
    StoneFrame f =
        StoneFrame.of(StoneMaker.quad("R1E", at(20, 0), at(24, 0), at(30, 12), at(25, 12)));
    Rake r =
        RakeFinder.rake(f, headcourse.layout.FaceEdge.Where.RIGHT, JobMaker.one().make().grid());
    assertEquals(26.565, r.offSquare().degrees(), 0.001);
    assertEquals(Length.inches(6), r.offset());
    assertTrue(r.longPoint() == Rake.LongPoint.TOP);
  }
}
