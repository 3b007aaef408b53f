package headcourse.bench;

import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.units.Length;

/** Adds up cutting tolerances and opened joints from the centre line to each end. */
final class StackUpFinder {
  private StackUpFinder() {}

  /** The key's half counts as a stone. */
  static StackUp find(Job job, HeadLayout head, Side side) {
    boolean key = head.stones().stream().anyMatch(s -> s.role() == Role.KEY);
    int own = (int) head.stones().stream().filter(s -> s.side() == side).count();
    int n = own + (key ? 1 : 0);
    Drift end = Drift.at(job, head, side, own);
    Length worst = end.worst();
    Length likely = end.likely();
    Length bearing = head.bearing(side).onWall();
    boolean clear = true;
    for (JointLine joint : head.joints()) {
      if (joint.side() == side && !joint.outer().isEmpty()) {
        clear &= clear(job, head, joint, Drift.at(job, head, side, joint.index()).worst());
      }
    }
    return new StackUp(side, n, worst, likely, bearing.minus(worst), bearing.plus(worst), clear);
  }

  /** Whether a joint keeps its distance from the jamb line when it is off by so much. */
  private static boolean clear(Job job, HeadLayout head, JointLine joint, Length off) {
    if (head.curved()) {
      return true;
    }
    Length near = joint.soffitMark().minus(off);
    Length far = joint.soffitMark().plus(job.setting().joint()).plus(off);
    Length clear = head.opening().head().clear();
    return far.compareTo(head.jamb(joint.side()).minus(clear)) <= 0
        || near.compareTo(head.jamb(joint.side()).plus(clear)) >= 0;
  }
}
