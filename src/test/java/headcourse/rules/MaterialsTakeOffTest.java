package headcourse.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.job.Job;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class MaterialsTakeOffTest {
  private static Materials of(Scene s) {
    Job job = s.make();
    return MaterialsTakeOff.of(job, s.heads(job));
  }

  /** arithmetic; 0.67 ft³ a bag of 80 lb from memory. */
  @Test
  void fiftySquareFeetOnHalfAnInchTakeFourBags() {
    Scene s = new Scene();
    s.each(
        p -> {
          p.returnDepth = Length.ZERO;
          p.areaM2 = p.mark.equals("K") ? 50 * Figures.M2_PER_FT2 : 0;
        });
    Materials m = of(s);
    assertEquals(2.083, m.mortar().bed() / 0.0283168, 0.001);
    s.scratch = Length.ZERO;
    assertEquals(4, of(s).bags());
  }

  @Test
  void identicalOpeningsAreCounted() {
    Scene one = new Scene();
    Scene three = new Scene();
    three.job.first().count = 3;
    Materials a = of(one);
    Materials b = of(three);
    assertEquals(13, a.stones());
    assertEquals(39, b.stones());
    assertEquals(3 * a.stoneM2(), b.stoneM2(), 1e-9);
    assertEquals(3 * a.stoneKg(), b.stoneKg(), 1e-9);
    assertEquals(3 * a.mortarM3(), b.mortarM3(), 1e-12);
    assertEquals(3 * a.arrisM(), b.arrisM(), 1e-9);
    assertEquals(a.kgPerM2(), b.kgPerM2(), 1e-9);
    assertEquals(3 * a.screws(), b.screws());
  }

  /** Arithmetic: a key of 10 in and twelve stones of 8 in, 12 in high, without returns. */
  @Test
  void addsUpByHand() {
    Scene s = new Scene();
    s.each(p -> p.returnDepth = Length.ZERO);
    Materials m = of(s);
    assertEquals(106 * 12 * 0.00064516, m.stoneM2(), 1e-9);
    assertEquals(106 * 12 * 0.00064516 * 0.03175 * 2320, m.stoneKg(), 1e-6);
    assertEquals(0.03175 * 2320 + 0.0254 * 130 * 16.018463, m.kgPerM2(), 1e-4);
    assertEquals(0, m.arrisM(), 0);
  }

  /** Arithmetic: a return of 4 in outside adds 2 3/4 in of bed behind it, less the relief. */
  @Test
  void returnsAreBeddedExceptWhereRelieved() {
    Scene s = new Scene();
    s.change("R6", p -> p.relief = Length.inches(3));
    Materials m = of(s);
    assertEquals((106 - 3) * 2.75 * 0.5 * 1.6387064e-5, m.mortar().soffit(), 1e-9);
    double in2 = 106 * 12 * 2 + (106 - 3) * 2.75;
    assertEquals(in2 * 0.5 * 1.1 * 1.6387064e-5, m.mortarM3(), 1e-9);
    assertEquals(106 * 0.0254, m.arrisM(), 1e-9);
  }

  /** Arithmetic: 17.0 ft² on ½ in of bed and ½ in of scratch coat, 10 % over: 1.56 ft³. */
  @Test
  void scratchCoatCountsLikeTheBed() {
    Scene s = new Scene();
    s.each(
        p -> {
          p.returnDepth = Length.ZERO;
          p.areaM2 = p.mark.equals("K") ? 17 * Figures.M2_PER_FT2 : 0;
        });
    Materials m = of(s);
    assertEquals(1.56, m.mortarM3() / 0.0283168, 0.005);
    s.scratch = Length.inches(0.75);
    assertEquals(17 * 1.25 / 12 * 1.1, of(s).mortarM3() / 0.028316846592, 1e-6);
  }

  /**
   * Arithmetic: fourteen joints of 3/8 in, 12 in high and 1 1/4 in deep, and behind the twelve
   * between stones 2 3/4 in more along the soffit.
   */
  @Test
  void jointsAreFilledThroughTheStoneAndTheReturn() {
    Scene s = new Scene();
    s.job.joints = headcourse.job.Setting.Joints.MORTAR;
    s.job.joint = Length.inches(0.375);
    Materials m = of(s);
    double in3 = (14 * 12 + 12 * 2.75) * 1.25 * 0.375;
    assertEquals(in3 * 1.6387064e-5, m.mortar().joints(), 1e-9);
    assertEquals(0.1 * m.mortar().set(), m.mortar().waste(), 1e-12);
  }

  @Test
  void screwsAreCountedByLengthAndOneThatThereIsNotIsLeftOut() {
    Scene s = new Scene();
    s.each(
        p -> {
          Length l =
              p.index == 1 ? null : p.mark.equals("K") ? Length.inches(3) : Length.inches(2.5);
          p.only(
              PieceMaker.notch(
                  headcourse.bench.EdgeName.OUTER, 7, 0.5, 0.5, l, 1.25, true, "joint"));
        });
    Materials m = of(s);
    assertEquals(
        List.of(
            new Materials.ScrewCount(Length.inches(2.5), 10),
            new Materials.ScrewCount(Length.inches(3), 1)),
        m.screwsByLength());
    assertEquals(11, m.screws());
  }
}
