package headcourse.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.geom.Point;
import headcourse.job.Above;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomArches;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Random heads of every shape: all are analysed, lines lie in joints, mirrored is mirrored. */
class RandomHeadsStandTest {
  private static final int JOBS = 120;

  private static Optional<HeadLayout> head(Job job) {
    Solution s =
        Shapes.named(job.openings().get(0).head().shape())
            .orElseThrow()
            .setOut(job, job.openings().get(0));
    return s instanceof Solution.Solved ok ? Optional.of(ok.head()) : Optional.empty();
  }

  private static Above above(long seed) {
    return switch ((int) (seed % 3)) {
      case 0 -> Above.NOTHING;
      case 1 -> new Above(Above.Kind.TRIANGLE, Length.ZERO);
      default -> new Above(Above.Kind.LEVEL, Length.inches(20));
    };
  }

  @Test
  void everyHeadIsAnalysed() {
    int stood = 0;
    int all = 0;
    int seats = 0;
    int several = 0;
    for (long seed = 0; seed < Seeds.of(JOBS); seed++) {
      JobMaker maker = seed % 2 == 0 ? RandomJobs.flat(seed) : RandomArches.job(seed);
      Job job = maker.make();
      Optional<HeadLayout> head = head(job);
      if (head.isEmpty()) {
        continue;
      }
      all++;
      double friction = 0.35 + 0.1 * (seed % 5);
      Above above = above(seed);
      HeadBlocks blocks = new HeadBlocks(head.get(), friction, above);
      String name = "seed " + seed;
      Standing s = StandingFinder.of(blocks::at, 1, 2.5);
      Blocks drawn = blocks.at(1);
      seats += drawn.left().isEmpty() ? 0 : 1;
      several += drawn.left().size() > 1 ? 1 : 0;
      assertTrue(s.weight() > 0, name);
      checkVerdict(s, name);
      if (s.thrust() != null) {
        stood++;
        lineLiesInTheJoints(s, drawn, name);
      }
      mirrored(s, StandingFinder.of(share -> blocks.at(share).mirrored(), 1, 2.5), name);
      if (seed % 7 == 0) {
        assertEquals(
            new WholeForces(drawn).leastThrust().orElse(-1.0),
            s.thrust() == null ? -1.0 : s.thrust(),
            2e-5,
            name);
      }
    }
    assertTrue(
        all > JOBS / 2 && stood > all / 2 && seats > all / 5 && several > 3,
        all + " " + stood + " " + seats + " " + several);
  }

  /** Bearings given in millimetres and read as inches: scores of stones on each jamb. */
  @Test
  void scoresOfStonesOnAJamb() {
    int most = 0;
    for (long seed : new long[] {8, 13, 15, 24, 36}) {
      JobMaker maker = RandomJobs.flat(seed, 24, 240);
      maker.first().bearing =
          new HeadSpec.Bearing(Length.inches(40), Length.inches(160), Length.inches(90));
      Optional<HeadLayout> head = head(maker.make());
      if (head.isEmpty()) {
        continue;
      }
      HeadBlocks blocks = new HeadBlocks(head.get(), 0.65, Above.NOTHING);
      Standing s = StandingFinder.of(blocks::at, 1, 2.5);
      most = Math.max(most, blocks.at(1).left().size());
      mirrored(s, StandingFinder.of(share -> blocks.at(share).mirrored(), 1, 2.5), "seed " + seed);
      assertEquals(
          new WholeForces(blocks.at(1)).leastThrust().orElse(-1.0),
          s.thrust() == null ? -1.0 : s.thrust(),
          2e-5,
          "seed " + seed);
    }
    assertTrue(most > 10, "at most " + most + " stones on a jamb");
  }

  private static void checkVerdict(Standing s, String name) {
    switch (s.verdict()) {
      case STANDS -> {
        assertNotNull(s.thrust(), name);
        assertTrue(s.thrust() <= s.most() + 1e-6, name);
        assertTrue(s.margin() >= 1 - 1e-6, name + " " + s.margin());
      }
      case PUSHES -> assertTrue(s.thrust() > s.most() - 1e-6, name);
      case FALLS -> assertEquals(null, s.thrust(), name);
    }
    if (s.verdict() != Standing.Verdict.STANDS && s.least() != null) {
      assertTrue(s.margin() <= 1 + 1e-6, name);
    }
  }

  /** By another reckoning than that which drew it: each place on a joint or a seat. */
  private static void lineLiesInTheJoints(Standing s, Blocks b, String name) {
    // Of joints over the jambs those of the ends stand for all.
    int over = Math.max(0, b.left().size() - 1) + Math.max(0, b.right().size() - 1);
    assertTrue(s.line().size() >= b.joints().size() - over - 2, name + " " + s.line().size());
    for (Point p : s.line()) {
      double off = Double.MAX_VALUE;
      for (Joint j : b.joints()) {
        off = Math.min(off, off(p, j.foot(), j.head()));
      }
      for (List<Seat> seats : List.of(b.left(), b.right())) {
        for (Seat seat : seats) {
          off = Math.min(off, off(p, seat.inner(), seat.outer()));
        }
      }
      assertTrue(off < 1e-3, name + ": " + off);
    }
  }

  private static double off(Point p, Point a, Point b) {
    return p.distance(a) + p.distance(b) - a.distance(b);
  }

  private static void mirrored(Standing one, Standing other, String name) {
    assertEquals(one.verdict(), other.verdict(), name);
    same(one.thrust(), other.thrust(), 1e-6, name);
    same(one.least(), other.least(), 1e-4, name);
    assertEquals(one.line().size(), other.line().size(), name);
    List<Point> back = new ArrayList<>(other.line());
    Collections.reverse(back);
    for (int i = 0; i < back.size(); i++) {
      assertEquals(0, one.line().get(i).distance(back.get(i).mirrored()), 0.05, name);
    }
  }

  private static void same(Double a, Double b, double off, String name) {
    assertEquals(a == null ? -1 : a, b == null ? -1 : b, off, name);
  }
}
