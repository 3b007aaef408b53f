package headcourse.bench;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random heads of every shape, worked up; the same for the same seed. */
final class RandomWork {
  private static final List<String> CURVED =
      List.of(
          "segmental", "semicircular", "three-centred", "elliptical", "pointed", "four-centred");

  private RandomWork() {}

  /**
   * One case.
   *
   * @param job the job
   * @param work its head worked up
   * @param name what to print when it fails
   */
  record Case(Job job, HeadWork work, String name) {}

  /** What must hold for a case. */
  interface Property {
    void holds(Case c);
  }

  /** The cases of so many seeds that have a solution. */
  static List<Case> cases(int seeds) {
    List<Case> cases = new ArrayList<>();
    for (long seed = 0; seed < seeds; seed++) {
      JobMaker maker = seed % 3 == 2 ? curved(seed) : RandomJobs.flat(seed);
      vary(maker, seed);
      Job job = maker.make();
      HeadSpec spec = job.openings().get(0).head();
      Solution s = Shapes.named(spec.shape()).orElseThrow().setOut(job, job.openings().get(0));
      if (s instanceof Solution.Solved ok) {
        HeadWork work = HeadBench.workUp(job, ok.head());
        cases.add(new Case(job, work, spec.shape() + ", seed " + seed));
      }
    }
    return cases;
  }

  private static void vary(JobMaker maker, long seed) {
    Random r = new Random(seed * 31 + 5);
    maker.thickness = Length.inches(0.5 + r.nextInt(18) / 16.0);
    maker.depthOfCut = Length.inches(1 + r.nextInt(9) / 2.0);
    maker.first().seat = Length.inches(r.nextInt(9) / 4.0);
    maker.first().soffit =
        r.nextInt(3) == 0 ? HeadSpec.Soffit.values()[r.nextInt(4)] : HeadSpec.Soffit.RETURNED;
  }

  private static JobMaker curved(long seed) {
    Random r = new Random(seed * 7919 + 11);
    JobMaker m = JobMaker.one();
    double width = 30 + r.nextInt(120);
    double part = r.nextDouble();
    m.first().shape = CURVED.get(r.nextInt(CURVED.size()));
    m.first().width = Length.inches(width);
    m.first().headHeight = Length.inches(5 + r.nextInt(9));
    switch (m.first().shape) {
      case "semicircular" -> m.first().params.put("stilt", Length.inches(r.nextInt(12)));
      case "pointed" -> m.first().params.put("radius", 0.6 + part);
      case "segmental" ->
          m.first().params.put("rise", Length.inches(Math.rint(width * (0.08 + 0.3 * part))));
      default ->
          m.first().params.put("rise", Length.inches(Math.rint(width * (0.35 + 0.1 * part))));
    }
    m.first().params.put("extrados", List.of("concentric", "level", "stepped").get(r.nextInt(3)));
    m.first().params.put("course", Length.inches(3 + r.nextInt(10)));
    m.first().target = Length.inches(4 + r.nextInt(6));
    m.first().min = Length.inches(2);
    m.first().max = Length.inches(18);
    m.first().key =
        r.nextInt(4) == 0
            ? null
            : new HeadSpec.Key(
                r.nextBoolean() ? null : Length.inches(4 + r.nextInt(5)),
                null,
                Length.inches(r.nextInt(3)),
                Length.inches(r.nextInt(3) / 2.0),
                Length.inches(r.nextInt(2) / 2.0));
    if (r.nextBoolean()) {
      m.joints = Setting.Joints.MORTAR;
      m.joint = Length.inches((1 + r.nextInt(4)) / 8.0);
      m.opens = Length.ZERO;
    }
    return m;
  }
}
