package headcourse.sheet.elevation;

import headcourse.layout.JointLine;
import headcourse.layout.Side;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The sizes from joint to joint along the soffit, runs of alike ones drawn together. They are
 * differences of printed running marks, so they add up to the overall width as printed.
 */
final class WidthRuns {
  private WidthRuns() {}

  /**
   * A run.
   *
   * @param from left end, distance right of the centre line
   * @param to right end
   * @param count how many stones
   * @param each size of each
   */
  record Run(Length from, Length to, int count, Length each) {
    /** As printed: {@code 8"}, or {@code 6 × 8" = 48"}. */
    String text(LengthFormat format) {
      String one = format.tape(each);
      return count == 1 ? one : count + " × " + one + " = " + format.tape(to.minus(from));
    }
  }

  /** The runs of a head, left to right. */
  static List<Run> of(HeadFigures figures) {
    List<Run> left = side(figures, Side.LEFT);
    List<Run> all = new ArrayList<>();
    for (Run r : left) {
      all.add(new Run(r.to.negated(), r.from.negated(), r.count, r.each));
    }
    Collections.reverse(all);
    Length a = first(figures, Side.LEFT);
    Length b = first(figures, Side.RIGHT);
    if (a.plus(b).isPositive()) {
      all.add(new Run(a.negated(), b, 1, a.plus(b)));
    }
    all.addAll(side(figures, Side.RIGHT));
    return all;
  }

  private static Length first(HeadFigures figures, Side side) {
    List<JointLine> joints = figures.joints(side);
    return joints.isEmpty() ? Length.ZERO : figures.snapped(joints.get(0).soffitMark());
  }

  private static List<Run> side(HeadFigures figures, Side side) {
    List<Run> runs = new ArrayList<>();
    List<JointLine> joints = figures.joints(side);
    for (int i = 1; i < joints.size(); i++) {
      Length from = figures.snapped(joints.get(i - 1).soffitMark());
      Length to = figures.snapped(joints.get(i).soffitMark());
      Length width = to.minus(from);
      Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
      if (last != null && last.each.equals(width)) {
        runs.set(runs.size() - 1, new Run(last.from, to, last.count + 1, width));
      } else {
        runs.add(new Run(from, to, 1, width));
      }
    }
    return runs;
  }
}
