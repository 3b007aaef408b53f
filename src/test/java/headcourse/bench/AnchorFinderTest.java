package headcourse.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.Anchor.Hold;
import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.job.Sheathing;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class AnchorFinderTest {
  private final JobMaker maker = JobMaker.one();

  private static Length in(double inches) {
    return Length.inches(inches);
  }

  private static Backing of(Double to, Backing.Kind kind, String name) {
    return new Backing(to == null ? null : in(to), kind, name, 0);
  }

  private Anchor at(Slot slot, double height) {
    return new AnchorFinder(maker.make()).find(slot, in(height), Length.ZERO);
  }

  /** Mouth 3/4 and run 1: chord 1.25, sin α = 0.6 (the triangle of 3, 4 and 5). */
  private static Slot threeFourFive() {
    return new Slot(in(0.75), in(1), 2.25 * 25.4);
  }

  /**
   * Screw 2 1/2, slot chord 0.6, slant 58°; bed 1/2, scratch coat 3/4, sheathing 1/2: by geometry
   * (2.5 − 0.6) sin 58° − 1.75 = −0.139, so the tip stands 0.14 in short of the framing.
   */
  @Test
  void aTipShortOfTheFramingHoldsInNothing() {
    maker.lengths = List.of(in(2.5));
    maker.scratch = in(0.75);
    double a = Math.toRadians(58);
    Slot slot = new Slot(in(0.6 * Math.sin(a)), in(0.6 * Math.cos(a)), 2.25 * 25.4);
    Anchor short1 = at(slot, 6);
    assertEquals(Hold.SHORT, short1.hold());
    assertEquals(-0.14, short1.best().inches(), 0.005);
    assertNull(short1.screw());
    assertNull(short1.holdsIn());
    assertTrue(short1.penetration().isZero());
    // 0.6 + 2.75 / sin 58° = 3.843: the next quarter of an inch.
    assertEquals(in(4), short1.needed());
    maker.lengths = List.of(in(2.5), in(4));
    assertEquals(in(4), at(slot, 6).screw());
  }

  /** By hand: (4.5 − 1.25) × 0.6 − 1/2 − 1/4 − 1/8 = 1.075. */
  @Test
  void penetrationWorkedByHand() {
    maker.scratch = in(0.25);
    maker.sheathing = new Sheathing(in(0.125), false);
    Anchor a = at(threeFourFive(), 6);
    assertEquals(in(4.5), a.screw());
    assertEquals(1.075, a.penetration().inches(), 1e-9);
    assertEquals(Backing.Kind.WOOD, a.holdsIn());
    // A stone that stands out a quarter of an inch has as much more bed: 0.825 is too little.
    Anchor proud = new AnchorFinder(maker.make()).find(threeFourFive(), in(6), in(0.25));
    assertEquals(Hold.SHORT, proud.hold());
    assertEquals(0.825, proud.best().inches(), 1e-9);
  }

  @Test
  void whatHoldsGoesByTheHeightOfTheSlot() {
    maker.scratch = Length.ZERO;
    maker.sheathing = new Sheathing(Length.ZERO, false);
    maker.backing =
        List.of(of(9.25, Backing.Kind.WOOD, "lintel"), of(12.0, Backing.Kind.BOARD, ""));
    assertEquals("lintel", at(threeFourFive(), 9.25).behind().name());
    assertEquals(Hold.HOLDS, at(threeFourFive(), 0).hold());
    assertEquals(Hold.NOTHING, at(threeFourFive(), 9.26).hold());
    assertEquals(Backing.Kind.BOARD, at(threeFourFive(), 12).behind().kind());
    // Below the soffit line is the opening, and above the last line the job says nothing.
    assertEquals(Backing.UNKNOWN, at(threeFourFive(), -0.1).behind());
    assertEquals(Backing.UNKNOWN, at(threeFourFive(), 12.1).behind());
    assertEquals(Hold.NOTHING, at(threeFourFive(), 12.1).hold());
  }

  @Test
  void anchorsAreMadeForWhatTheyHoldIn() {
    maker.scratch = Length.ZERO;
    maker.sheathing = new Sheathing(Length.ZERO, false);
    for (Backing.Kind kind :
        List.of(Backing.Kind.STEEL, Backing.Kind.CONCRETE, Backing.Kind.BLOCK)) {
      maker.backing = List.of(of(null, kind, ""));
      maker.kinds = List.of(AnchorKind.WOOD_SCREW);
      assertEquals(Hold.OTHER_KIND, at(threeFourFive(), 6).hold(), kind.word());
      assertNull(at(threeFourFive(), 6).screw());
      maker.kinds =
          List.of(AnchorKind.WOOD_SCREW, AnchorKind.SELF_DRILLING_SCREW, AnchorKind.MASONRY_SCREW);
      Anchor a = at(threeFourFive(), 6);
      assertEquals(kind, a.holdsIn());
      assertEquals(
          kind == Backing.Kind.STEEL ? AnchorKind.SELF_DRILLING_SCREW : AnchorKind.MASONRY_SCREW,
          a.kind());
    }
  }

  @Test
  void sheathingHoldsOnlyWhereTheJobSaysSo() {
    maker.scratch = Length.ZERO;
    maker.backing = List.of(of(null, Backing.Kind.GAP, ""));
    maker.sheathing = new Sheathing(in(0.75), false);
    assertEquals(Hold.NOTHING, at(threeFourFive(), 6).hold());
    maker.sheathing = new Sheathing(in(0.75), true);
    assertEquals(Hold.THIN, at(threeFourFive(), 6).hold());
    maker.embedment = in(0.75);
    Anchor a = at(threeFourFive(), 6);
    assertEquals(Backing.Kind.SHEATHING, a.holdsIn());
    // (3.5 − 1.25) × 0.6 − 1/2 = 0.85 goes right through.
    assertEquals(in(3.5), a.screw());
    assertEquals(in(0.75), a.penetration());
  }

  /**
   * Stones 12 in high have their centre of mass near 5 in, their returns below, and slots stand
   * halfway from there to 9 1/2 in, two thicknesses clear of the top: 7 1/4 in. Where the lintel
   * ends at 6 1/2 in they move down onto it.
   */
  @Test
  void slotsStandWhereScrewsHold() {
    JobMaker m = JobMaker.one();
    List<Double> usual = slots(m);
    m.backing = List.of(of(6.5, Backing.Kind.WOOD, "lintel"), of(null, Backing.Kind.BOARD, ""));
    List<Double> onLintel = slots(m);
    assertTrue(usual.stream().allMatch(h -> h > 6.5), usual.toString());
    assertTrue(onLintel.stream().allMatch(h -> h < 6.5), onLintel.toString());
  }

  /** Heights of slots above the soffit of upright stones, in. */
  private static List<Double> slots(JobMaker m) {
    return HeadBenchTest.work(m.make()).pieces().stream()
        .flatMap(p -> p.notches().stream())
        .map(n -> n.height().mm() / 25.4)
        .toList();
  }
}
