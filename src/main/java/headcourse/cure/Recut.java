package headcourse.cure;

import headcourse.job.Change;
import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** A stone that is cut already, cut again to let the rest be solved. */
record Recut(Job job, Fitted stone) {
  /** How far either way a width is tried, in steps of the grid. */
  private static final long FARTHEST = 48;

  static void addTo(List<Dial> dials, Job job, Opening opening) {
    for (Fitted f : job.report().fitted()) {
      if (f.opening().equals(opening.mark())) {
        dials.add(new Recut(job, f).dial());
      }
    }
  }

  private Dial dial() {
    long base = job.grid().nearest(stone.bottom());
    return new Dial(
        stone.path(),
        base,
        0,
        Math.min(FARTHEST, base - 1),
        Math.max(1, base),
        v -> {
          String text = text(v);
          return text == null
              ? null
              : List.of(
                  new Change(stone.path(), text, "recut " + stone.stone() + ", or cut another"));
        },
        this::tells);
  }

  /** With another width below, its edges leaning as they do, as the job file has it. */
  private String text(long ticks) {
    Grid grid = job.grid();
    LengthFormat format = new LengthFormat(job.units(), grid);
    Length bottom = grid.ticks(ticks);
    Length top =
        stone.top() == null ? null : grid.snap(stone.top().plus(bottom.minus(stone.bottom())));
    if (!bottom.isPositive() || top != null && !top.isPositive()) {
      return null;
    }
    if (top == null && stone.height() == null && stone.piece().isEmpty()) {
      return format.plain(bottom);
    }
    List<String> parts = new ArrayList<>();
    parts.add("bottom: " + format.plain(bottom));
    if (top != null) {
      parts.add("top: " + format.plain(top));
    }
    if (stone.height() != null) {
      parts.add("height: " + format.plain(grid.snap(stone.height())));
    }
    if (!stone.piece().isEmpty()) {
      parts.add("piece: " + stone.piece());
    }
    return "{" + String.join(", ", parts) + "}";
  }

  private String tells(HeadLayout then) {
    LengthFormat format = new LengthFormat(job.units(), job.grid());
    Length off = then.stone(stone.stone()).bottom().minus(stone.bottom());
    return stone.stone()
        + " as it was cut, "
        + format.plainWithUnit(stone.bottom())
        + " wide at the bottom, leaves no place for the rest; "
        + format.plainWithUnit(off.abs())
        + (off.isPositive() ? " wider" : " narrower")
        + " it would";
  }
}
