package headcourse.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Measured;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the jamb lines stand at the soffit; worked by hand, inches. */
class JambsTest {
  private static Length in(Double inches) {
    return inches == null ? null : Length.inches(inches);
  }

  private static Jambs jambs(
      Double head, Double middle, Double sill, Double left, Double right, Double off) {
    JobMaker m = JobMaker.one();
    m.first().measured =
        new Measured(in(head), in(middle), in(sill), List.of(), in(left), in(right), in(off));
    return Jambs.of(m.make().openings().get(0));
  }

  private static void stand(double left, double right, Jambs jambs) {
    assertEquals(Length.inches(left), jambs.left());
    assertEquals(Length.inches(right), jambs.right());
  }

  @Test
  void asDrawn() {
    Jambs jambs = Jambs.of(JobMaker.one().make().openings().get(0));
    stand(48, 48, jambs);
    assertTrue(jambs.even());
  }

  @Test
  void widthAtTheHeadReplacesTheDrawn() {
    stand(48.125, 48.125, jambs(96.25, 96.0, 95.0, null, null, null));
  }

  /** Each jamb stands its lean farther from the plumbed centre than its foot does. */
  @Test
  void leanShiftsEachJambByItself() {
    stand(48.25, 47.875, jambs(null, null, 96.0, 0.25, -0.125, null));
    stand(48.25, 47.875, jambs(96.125, null, 96.0, 0.25, -0.125, null));
    stand(48.25, 48, jambs(null, null, null, 0.25, null, null));
    // Half way up a jamb has leant by half.
    stand(48.125, 47.875, jambs(null, 95.875, null, 0.25, 0.0, null));
  }

  @Test
  void markOffTheMiddle() {
    stand(48.5, 47.5, jambs(96.0, null, null, null, null, 0.5));
    stand(47.75, 48.25, jambs(96.0, null, null, 0.25, 0.25, -0.25));
  }
}
