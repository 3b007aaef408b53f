package headcourse.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.job.Job;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Values by arithmetic: a head 12 in high whose ends bear 5 in. */
class CourseClosersTest {
  private static Length in(double inches) {
    return Length.inches(inches);
  }

  private static List<Closer> of(Scene s) {
    Job job = s.make();
    return CourseClosers.of(job, s.heads(job).get(0));
  }

  @Test
  void plumbEndsAreMetCourseByCourse() {
    Scene s = new Scene();
    s.job.courses = List.of(in(-9), in(-2), in(5), in(13), in(20));
    List<Closer> all = of(s);
    assertEquals(4, all.size());
    Length z = Length.ZERO;
    assertEquals(
        List.of(
            new Closer(Side.LEFT, 2, in(-2), in(5), in(5), in(5), in(2), z),
            new Closer(Side.LEFT, 3, in(5), in(13), in(5), in(5), z, in(1)),
            new Closer(Side.RIGHT, 2, in(-2), in(5), in(5), in(5), in(2), z),
            new Closer(Side.RIGHT, 3, in(5), in(13), in(5), in(5), z, in(1))),
        all);
    assertEquals(in(12), all.get(0).height().plus(all.get(1).height()));
  }

  @Test
  void aRakedEndSlantsTheClosersCut() {
    Scene s = new Scene();
    s.job.courses = List.of(in(0), in(4), in(8), in(12));
    s.change("R6", p -> p.lean = in(3).mm());
    List<Closer> right = of(s).stream().filter(c -> c.side() == Side.RIGHT).toList();
    assertEquals(3, right.size());
    for (int i = 0; i < 3; i++) {
      assertEquals(5 + i, right.get(i).lower().inches(), 1e-9);
      assertEquals(6 + i, right.get(i).upper().inches(), 1e-9);
      assertEquals(1, right.get(i).offset().inches(), 1e-9);
      assertEquals(Length.ZERO, right.get(i).under());
    }
  }

  @Test
  void withoutCoursesNothingIsSaid() {
    assertEquals(List.of(), of(new Scene()));
  }
}
