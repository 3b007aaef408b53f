package headcourse.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.Lands.Mover;
import headcourse.bench.builds.BuildPlan;
import headcourse.job.Care;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.job.Opening;
import headcourse.job.Setting;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Heads of every shape, built in numbers: held against a second, plain way of building them. */
class LandingsTest {
  @Test
  void aSecondWayOfBuildingThemAgrees() {
    int telling = 0;
    for (RandomWork.Case c : RandomWork.cases(Seeds.of(30))) {
      Lands found = Landings.of(c.job(), c.work().layout());
      PlainBuilds plain = new PlainBuilds(c.job(), c.work().layout(), c.name().hashCode());
      agree(c.name() + ", checked", found.checked(), plain, true);
      agree(c.name() + ", unchecked", found.unchecked(), plain, false);
      telling += found.unchecked() > 0.02 && found.unchecked() < 0.98 ? 1 : 0;
    }
    assertTrue(telling > 0, "some heads land sometimes");
  }

  // Both shares are of samples, 10,000 builds and 2,000.
  private static void agree(String name, double share, PlainBuilds plain, boolean checking) {
    int builds = 2000;
    double other = (double) plain.landed(builds, checking) / builds;
    double p = (share * Landings.BUILDS + other * builds + 1) / (Landings.BUILDS + builds + 2);
    double within = 4.5 * Math.sqrt(p * (1 - p) * (1.0 / Landings.BUILDS + 1.0 / builds));
    assertEquals(other, share, within + 1e-12, name);
  }

  @Test
  void aMirroredHeadLandsAsOften() {
    for (RandomWork.Case c : RandomWork.cases(Seeds.of(30))) {
      mirrors(c.job(), c.work().layout(), c.name());
    }
    int lopsided = 0;
    for (long seed = 0; seed < Seeds.of(12); seed++) {
      JobMaker m = RandomJobs.flat(seed, 60, 120);
      m.first().rhythm = HeadSpec.Rhythm.MIXED;
      m.first().mirror = false;
      m.first().shape = "soldier";
      Job job = m.make();
      Solution s = Shapes.named("soldier").orElseThrow().setOut(job, job.openings().get(0));
      if (s instanceof Solution.Solved solved) {
        HeadLayout head = solved.head();
        mirrors(job, head, "seed " + seed);
        BuildPlan plan = Landings.plan(job, head);
        lopsided += plan.first().equals(plan.second()) ? 0 : 1;
      }
    }
    assertTrue(lopsided > 0, "some heads differ left and right");
  }

  private static void mirrors(Job job, HeadLayout head, String name) {
    assertEquals(Landings.of(job, head), Landings.of(job, mirrored(head)), name);
  }

  private static HeadLayout mirrored(HeadLayout h) {
    HeadLayout m = MirroredHead.of(h);
    Opening o = h.opening();
    Opening swapped =
        new Opening(
            o.path(),
            o.mark(),
            o.label(),
            o.count(),
            List.of(),
            null,
            o.width(),
            o.height(),
            o.reveal(),
            o.wallRight(),
            o.wallLeft(),
            o.measured(),
            o.head());
    return new HeadLayout(
        swapped, m.halfWidth(), m.stones(), m.joints(), m.curve(), m.proof(), m.remarks());
  }

  /** What each error alone spreads the end by, worked out and built. */
  @Test
  void errorsAloneSpreadTheEndAsIsSaid() {
    Length off = Length.inches(1 / 64.0);
    Length none = Length.ZERO;
    for (boolean mortar : new boolean[] {false, true}) {
      for (Mover mover : List.of(Mover.FENCE, Mover.CUT, Mover.JOINT, Mover.KEY)) {
        JobMaker m = JobMaker.one();
        m.joints = mortar ? Setting.Joints.MORTAR : Setting.Joints.DRY;
        m.joint = mortar ? Length.inches(0.375) : none;
        m.opens = none;
        m.care =
            new Care(
                Care.OWN,
                mover == Mover.CUT ? off : none,
                mover == Mover.FENCE ? off : none,
                mover == Mover.JOINT ? off : none,
                none,
                mover == Mover.KEY ? off : none,
                none);
        Job job = m.make();
        HeadLayout head =
            ((Solution.Solved)
                    Shapes.named("soldier").orElseThrow().setOut(job, job.openings().get(0)))
                .head();
        BuildPlan plan = Landings.plan(job, head);
        double said = Movers.spread(plan, plan.second(), mover);
        double joints = mortar ? Movers.spread(plan, plan.second(), Mover.JOINT) : 0;
        double all = mover == Mover.JOINT ? said : Math.hypot(said, joints);
        double[] ends = new PlainBuilds(job, head, 5).rightEnds(5000);
        assertEquals(all, spread(ends), 4 * all * Math.sqrt(1.0 / ends.length), mover.word());
        // A dozen stones as wide as one another, the key's half beside six of them.
        if (mover == Mover.FENCE) {
          int n = plan.second().stones().size();
          assertEquals(off.mm() * Math.sqrt(n * n + 0.25), said, 1e-9);
          assertEquals(mortar ? Mover.FENCE : mover, Landings.of(job, head).mover());
          assertEquals(n, Landings.of(job, head).alike());
        }
      }
    }
  }

  private static double spread(double[] xs) {
    double mean = Arrays.stream(xs).average().orElseThrow();
    return Math.sqrt(Arrays.stream(xs).map(x -> (x - mean) * (x - mean)).average().orElseThrow());
  }

  @Test
  void whatWasMeasuredIsOffAsATapeIs() {
    JobMaker m = JobMaker.one();
    Length before = site(m);
    assertEquals(Care.ORDINARY.site(), before);
    m.first().measured =
        new Measured(Length.inches(96.25), null, null, List.of(), null, null, Length.ZERO);
    assertEquals(Care.ORDINARY.read(), site(m));
    m.first().measured = new Measured(null, null, null, List.of(), null, null, Length.ZERO);
    assertEquals(Care.ORDINARY.site(), site(m));
  }

  private static Length site(JobMaker m) {
    Job job = m.make();
    var solved = Shapes.named("soldier").orElseThrow().setOut(job, job.openings().get(0));
    return Landings.site(job, ((Solution.Solved) solved).head());
  }
}
