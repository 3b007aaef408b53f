package headcourse.bench;

import headcourse.job.Job;
import headcourse.layout.Drift;
import headcourse.layout.HeadLayout;
import headcourse.layout.Role;
import headcourse.layout.Shortfall;
import headcourse.layout.Side;

/** Adds up cutting tolerances and opened joints from the centre line to each end. */
final class StackUpFinder {
  private StackUpFinder() {}

  /** The key's half counts as a stone. */
  static StackUp find(Job job, HeadLayout head, Side side) {
    boolean key = head.stones().stream().anyMatch(s -> s.role() == Role.KEY);
    int own = (int) head.stones().stream().filter(s -> s.side() == side).count();
    return new StackUp(
        side,
        own + (key ? 1 : 0),
        Drift.at(job, head, side, own),
        head.bearing(side).onWall(),
        Shortfall.of(job, head, side));
  }
}
