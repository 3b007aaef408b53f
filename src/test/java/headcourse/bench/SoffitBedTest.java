package headcourse.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The bed between the returns and the rough head; the default bed is half an inch. */
class SoffitBedTest {
  private static HeadWork work(double... atAndUp) {
    JobMaker m = JobMaker.one();
    List<Measured.Level> levels = new ArrayList<>();
    for (int i = 0; i < atAndUp.length; i += 2) {
      levels.add(new Measured.Level(Length.inches(atAndUp[i]), Length.inches(atAndUp[i + 1])));
    }
    m.first().measured = new Measured(null, null, null, levels, null, null, null);
    Job job = m.make();
    Solution s = Shapes.named("soldier").orElseThrow().setOut(job, job.openings().get(0));
    HeadLayout head = ((Solution.Solved) s).head();
    return HeadBench.workUp(job, head);
  }

  private static BedUnder under(HeadWork w, String stone) {
    return w.bed().of(stone).orElseThrow();
  }

  /** A rise of 3/4 in over 96 in is 1/128 in an inch; the key spans 5 in either side. */
  @Test
  void wedgeFromLeftToRight() {
    HeadWork w = work(-48, 0, 48, 0.75);
    assertEquals(Length.ZERO, w.bed().lowered());
    assertTrue(w.bed().outOfLevel());
    BedUnder key = under(w, "K");
    assertEquals(0.5 + 43 / 128.0, key.left().mm() / 25.4, 1e-9);
    assertEquals(0.5 + 53 / 128.0, key.right().mm() / 25.4, 1e-9);
    assertNotEquals(key.left(), key.right());
    // Past the outmost places it stays level.
    BedUnder end = under(w, "L6");
    assertEquals(0.5, end.left().mm() / 25.4, 1e-9);
  }

  @Test
  void loweredToTheLowestPlace() {
    HeadWork w = work(-48, 0, 0, -0.25, 48, 0);
    assertEquals(Length.inches(0.25), w.bed().lowered());
    BedUnder key = under(w, "K");
    assertEquals(0.5, key.thinnest().mm() / 25.4, 1e-9);
    assertEquals(key.left(), key.right());
    assertEquals(key.left(), key.thickest());
    assertTrue(w.bed().outOfLevel());
  }

  @Test
  void levelHead() {
    HeadWork w = work(-48, 0.125, 48, 0.125);
    assertEquals(Length.inches(-0.125), w.bed().lowered());
    assertFalse(w.bed().outOfLevel());
    for (BedUnder b : w.bed().under()) {
      assertEquals(Length.inches(0.5), b.thickest());
    }
    assertFalse(work().bed().measured());
  }

  /** Nowhere less than the job's bed, and just that where the rough head is lowest. */
  @Test
  void neverThinnerThanTheBed() {
    for (long seed = 0; seed < 200; seed++) {
      Random r = new Random(seed);
      double[] levels = new double[2 * (1 + r.nextInt(5))];
      for (int i = 0; i < levels.length; i += 2) {
        levels[i] = -45 + 90.0 * i / levels.length;
        levels[i + 1] = r.nextInt(17) / 16.0 - 0.5;
      }
      HeadWork w = work(levels);
      double least =
          w.bed().under().stream().mapToDouble(b -> b.thinnest().mm()).min().orElseThrow();
      assertEquals(12.7, least, 1e-6, "seed " + seed);
      List<BedUnder> all = w.bed().under();
      for (int i = 0; i + 1 < all.size(); i++) {
        // Dry stones share an edge, so their beds meet there.
        assertEquals(all.get(i).right().mm(), all.get(i + 1).left().mm(), 1e-6, "seed " + seed);
      }
    }
  }
}
