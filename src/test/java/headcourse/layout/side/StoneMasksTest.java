package headcourse.layout.side;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatShape;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class StoneMasksTest {
  private static final int JOBS = 200;

  /** Where joints may stand is found by halving; asking every tick is the second way. */
  @Test
  void aJointStandsWhereEveryTickAskedByItselfSaysSo() {
    int unsteady = 0;
    int inside = 0;
    int beyond = 0;
    for (long seed = 0; seed < JOBS; seed++) {
      JobMaker maker = RandomJobs.flat(seed, 24, 120);
      if (seed % 2 == 0) {
        // A wide bed on a low head takes the most along x, and not the same at each foot.
        maker.first().headHeight = Length.inches(1.5);
        maker.joints = Setting.Joints.MORTAR;
        maker.joint = Length.inches(1.5);
      }
      Job job = maker.make();
      var shape = (FlatShape) Shapes.named(job.openings().get(0).head().shape()).orElseThrow();
      FlatReading reading = shape.read(job, job.openings().get(0));
      if (reading.head() == null) {
        continue;
      }
      FlatHead head = reading.head();
      List<SideCase> cases = head.cases(head.terms().both(), Double.NaN);
      if (cases.isEmpty()) {
        continue;
      }
      Lines lines = cases.get(cases.size() / 2).lines();
      long[] wanting = {SideCheck.ANY, 0, Length.mm(1).picometres(), Length.mm(4).picometres()};
      for (long most : wanting) {
        SideCheck check = new SideCheck(head.terms(), lines, head.fanned(), most);
        Asked asked = new Asked(check, new Blanks(head.terms(), head.geometry(), lines), 0);
        int words = (int) (head.terms().half() / head.terms().tick() / 64) + 3;
        for (int index = 1; index < 30; index += 4) {
          long start = lines.start();
          StoneMasks masks = new StoneMasks(head.terms(), asked, start, words, index, null);
          unsteady += check.unsteady(index, start, start + words * 64L - 1) > 0 ? 1 : 0;
          for (int at = 0; at < words * 64; at++) {
            boolean stands = (masks.stands[at >> 6] >>> (at & 63) & 1) != 0;
            assertEquals(
                check.jointStands(index, start + at),
                stands,
                "seed " + seed + ", joint " + index + " at " + at);
            inside += check.inside(index, start + at) ? 1 : 0;
            beyond += check.beyond(index, start + at) ? 1 : 0;
          }
        }
      }
    }
    assertTrue(unsteady > 300 && inside > 10_000 && beyond > 1000, unsteady + " " + beyond);
  }
}
