package headcourse.cli;

import headcourse.bench.HeadWork;
import headcourse.job.Job;
import headcourse.layout.StoneChange;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** Says which stones changed because others were cut otherwise than drawn. */
final class ChangeLines {
  private ChangeLines() {}

  static List<String> of(Job job, HeadWork head) {
    LengthFormat format = new LengthFormat(job.units(), job.grid());
    List<String> lines = new ArrayList<>();
    for (StoneChange c : head.layout().asBuilt().changes()) {
      lines.add("  " + head.layout().opening().mark() + "-" + c.mark() + ": " + text(c, format));
    }
    return lines;
  }

  private static String text(StoneChange c, LengthFormat f) {
    return switch (c.kind()) {
      case NEW -> "new, " + f.plainWithUnit(c.bottom()) + " wide";
      case GONE -> "not needed any more";
      case MOVED -> "cut as before, stands " + shift(c.shift(), f);
      case RECUT ->
          c.bottom().equals(c.bottomBefore()) && c.top().equals(c.topBefore())
              ? "its return is cut otherwise, stands " + shift(c.shift(), f)
              : "now "
                  + sizes(c.bottom(), c.top(), f)
                  + ", before "
                  + sizes(c.bottomBefore(), c.topBefore(), f);
    };
  }

  private static String sizes(Length bottom, Length top, LengthFormat f) {
    return bottom.equals(top)
        ? f.plainWithUnit(bottom)
        : f.plainWithUnit(bottom) + " below and " + f.plainWithUnit(top) + " above";
  }

  private static String shift(Length shift, LengthFormat f) {
    return f.plainWithUnit(shift.abs()) + (shift.isPositive() ? " farther out" : " farther in");
  }
}
