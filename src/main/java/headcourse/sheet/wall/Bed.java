package headcourse.sheet.wall;

import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.job.Opening;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.List;

/**
 * The mortar between the returns and the rough head along its length. The soffit is set level,
 * lowered so far that the least bed at the lowest measured point is the job's.
 *
 * @param least the job's bed
 * @param levels measured levels from left to right; empty where none were taken
 */
record Bed(Length least, List<Measured.Level> levels) {
  static Bed of(Job job, Opening opening) {
    Measured m = opening.measured();
    List<Measured.Level> levels = m == null ? List.of() : m.soffit();
    return new Bed(job.wall().bed(), levels);
  }

  /** Whether the bed is the same everywhere. */
  boolean level() {
    return levels.stream().map(Measured.Level::up).distinct().count() <= 1;
  }

  /** The bed over a place, mm; levels run straight between the places where they were taken. */
  double at(double x) {
    if (level()) {
      return least.mm();
    }
    double low = levels.stream().mapToDouble(l -> l.up().mm()).min().orElse(0);
    return least.mm() + up(x) - low;
  }

  private double up(double x) {
    Measured.Level last = levels.get(0);
    for (Measured.Level l : levels) {
      if (x <= l.at().mm()) {
        double run = l.at().mm() - last.at().mm();
        double t = run < 1e-9 ? 1 : (x - last.at().mm()) / run;
        return last.up().mm() + (l.up().mm() - last.up().mm()) * Math.max(0, t);
      }
      last = l;
    }
    return last.up().mm();
  }

  /** The bed over a place on the grid. */
  Length printed(double x, Grid grid) {
    return grid.snapMm(at(x));
  }
}
