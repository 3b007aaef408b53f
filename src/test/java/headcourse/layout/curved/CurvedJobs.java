package headcourse.layout.curved;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Setting;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.stream.Collectors;

/** Curved jobs for tests, in inches. */
final class CurvedJobs {
  private CurvedJobs() {}

  /** A dry head of a shape, with a key like its other stones. */
  static JobMaker of(String shape, double width, double depth) {
    JobMaker m = JobMaker.one();
    m.first().shape = shape;
    m.first().width = Length.inches(width);
    m.first().headHeight = Length.inches(depth);
    m.first().min = Length.inches(2);
    m.first().max = Length.inches(24);
    m.first().target = Length.inches(6);
    m.first().key = new HeadSpec.Key(null, null, Length.ZERO, Length.ZERO, Length.ZERO);
    return m;
  }

  static void mortar(JobMaker m, double joint) {
    m.joints = Setting.Joints.MORTAR;
    m.joint = Length.inches(joint);
  }

  static Solution solve(JobMaker m) {
    Job job = m.make();
    return Shapes.named(m.first().shape).orElseThrow().setOut(job, job.openings().get(0));
  }

  static HeadLayout head(JobMaker m) {
    Solution s = solve(m);
    if (s instanceof Solution.Refused r) {
      throw new AssertionError(
          r.problems().stream().map(d -> d.message()).collect(Collectors.joining("\n")));
    }
    return ((Solution.Solved) s).head();
  }

  static double inches(double mm) {
    return mm / 25.4;
  }
}
