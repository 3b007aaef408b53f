package headcourse.layout.flat;

import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** A stone that is cut already, cut again. */
public final class Recut {
  /** How far either way a width is tried, in steps of the grid. */
  static final long FARTHEST = 48;

  private final Grid grid;
  private final LengthFormat format;
  private final Fitted stone;

  /** For a stone of a job. */
  public Recut(Job job, Fitted stone) {
    this.grid = job.grid();
    this.format = new LengthFormat(job.units(), grid);
    this.stone = stone;
  }

  /** Its width below, ticks. */
  long base() {
    return grid.nearest(stone.bottom());
  }

  /** The stone with other widths, nearest first. */
  public List<Fitted> others() {
    List<Fitted> all = new ArrayList<>();
    for (long d = 1; d <= Math.min(FARTHEST, base() - 1); d++) {
      for (long ticks : new long[] {base() - d, base() + d}) {
        Fitted other = to(ticks);
        if (other != null) {
          all.add(other);
        }
      }
    }
    return all;
  }

  /** The stone with another width below, its edges leaning as they do; null where it is none. */
  Fitted to(long ticks) {
    Length bottom = grid.ticks(ticks);
    Length top =
        stone.top() == null ? null : grid.snap(stone.top().plus(bottom.minus(stone.bottom())));
    Length height = stone.height() == null ? null : grid.snap(stone.height());
    boolean solid = bottom.isPositive() && (top == null || top.isPositive());
    return solid
        ? new Fitted(
            stone.path(), stone.opening(), stone.stone(), bottom, top, height, stone.piece())
        : null;
  }

  /** As the job file has it. */
  public String text(Fitted f) {
    if (f.top() == null && f.height() == null && f.piece().isEmpty()) {
      return format.plain(f.bottom());
    }
    List<String> parts = new ArrayList<>();
    parts.add("bottom: " + format.plain(f.bottom()));
    if (f.top() != null) {
      parts.add("top: " + format.plain(f.top()));
    }
    if (f.height() != null) {
      parts.add("height: " + format.plain(f.height()));
    }
    if (!f.piece().isEmpty()) {
      parts.add("piece: " + f.piece());
    }
    return "{" + String.join(", ", parts) + "}";
  }
}
