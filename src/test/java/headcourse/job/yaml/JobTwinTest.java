package headcourse.job.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.job.Job;
import headcourse.job.Limits;
import headcourse.testing.JobMaker;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.Units;
import org.junit.jupiter.api.Test;

/** A job read from text is the job that a program makes, whatever units it is written in. */
class JobTwinTest {
  private static final String IN_INCHES =
      """
      units: in
      stone: {name: Grey sandstone, kind: sandstone, density: 2320 kg/m3, thickness: 1 1/4}
      tools: {saw: {kerf: 1/8, depth-of-cut: 4}}
      fastener: {lengths: [3 1/2, 2, 2 1/2, 3, 4 1/2, 4], cover: 3/8}
      openings:
        - mark: D1
          label: Door
          width: 8'
          height: 8'
          head:
            key: {bottom: 10, top: 10}
            stones: {min: 5, max: 9, target: 8, seed: 1}
            bearing: {min: 4, max: 8, target: 6}
      """;

  // The same lengths at 25.4 mm to the inch; what stands on its default in inches is written out.
  private static final String IN_MILLIMETRES =
      """
      units: mm
      grid: 1/16 in
      paper: letter
      stone: {name: Grey sandstone, kind: sandstone, density: 2320 kg/m3, thickness: 31.75}
      wall: {bed: 12.7, scratch: 12.7, sheathing: 12.7, framing: 88.9}
      setting: {opens: 0.396875, cut-tolerance: 0.79375}
      tools:
        saw: {kerf: 3.175, depth-of-cut: 101.6, clean-cut: 3.175}
        grinder: {blade: 114.3, kerf: 6.35}
      fastener:
        lengths: [50.8, 63.5, 76.2, 88.9, 101.6, 114.3]
        shank: 4.7625
        head: 9.525
        embedment: 25.4
        cover: 9.525
      openings:
        - mark: D1
          label: Door
          width: 2438.4
          height: 2.4384 m
          reveal: 101.6
          head:
            height: 304.8
            key: {bottom: 25.4 cm, top: 254}
            stones: {give: 12.7, min: 127, max: 228.6, target: 203.2, step: 12.7, seed: 1}
            bearing: {min: 101.6, max: 203.2, target: 152.4}
            clear: 38.1
            seat: 25.4
      """;

  private static Job read(String text) {
    var outcome = ReaderCase.read(text);
    assertEquals("", ReaderCase.said(outcome));
    return outcome.value().orElseThrow();
  }

  @Test
  void readAndMadeAreTheSame() {
    Job made = JobMaker.one().make();
    for (String text : new String[] {IN_INCHES, IN_MILLIMETRES}) {
      Job read = read(text);
      assertEquals(made.openings(), read.openings());
      assertEquals(made.stone(), read.stone());
      assertEquals(made.wall(), read.wall());
      assertEquals(made.setting(), read.setting());
      assertEquals(made.tools(), read.tools());
      assertEquals(made.fastener(), read.fastener());
      assertEquals(made.grid(), read.grid());
      assertEquals(made.papers(), read.papers());
      assertEquals(made.stock(), read.stock());
      assertEquals(Limits.DEFAULT, read.checks().limits());
      assertEquals(made.steps(), read.steps());
    }
  }

  @Test
  void bareNumbersAreInTheJobsUnits() {
    Job inch = read("stone: {thickness: 1}\nopenings: [{width: 96}]\n");
    Job metric = read("units: mm\nstone: {thickness: 30}\nopenings: [{width: 2400}]\n");
    assertEquals(Length.inches(96), inch.openings().get(0).width());
    assertEquals(Length.mm(2400), metric.openings().get(0).width());
    assertEquals(Units.MILLIMETRE, metric.units());
    assertEquals(new Grid(Length.mm(1)), metric.grid());
    // Metric defaults are round millimetres, not converted inches.
    var head = metric.openings().get(0).head();
    assertEquals(Length.mm(300), head.height());
    assertEquals(Length.mm(150), head.bearing().target());
    assertEquals(Length.mm(200), head.bearing().max());
    assertEquals(Length.mm(180), head.stones().target());
    assertEquals(Length.mm(100), metric.openings().get(0).reveal());
  }
}
