package headcourse.layout.fitted;

import headcourse.layout.side.Choice;
import headcourse.layout.side.End;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.Lines;
import headcourse.layout.side.SideCase;
import headcourse.layout.side.SideCheck;

/** What is left of a side with its stones as wide as drawn, a little farther out or in. */
final class ShiftedSide {
  private ShiftedSide() {}

  /**
   * The choice, or null where it breaks a constraint. In a fan every stone's rakes change with its
   * place, so nothing is won by it there.
   *
   * @param head the head as the side sees it
   * @param rest what is left of the side
   * @param drawn the side as drawn, or null
   * @param there how many stones are there
   */
  static Choice of(FlatHead head, SideCase rest, Choice drawn, int there) {
    if (drawn == null || drawn.count() <= there || head.geometry().fanned()) {
      return null;
    }
    Lines lines = rest.lines();
    long before = there == 0 ? drawn.lines().start() : drawn.feet()[there - 1];
    long shift = lines.start() - before;
    End end = null;
    for (End e : rest.ends()) {
      end = e.foot() == drawn.end().foot() + shift ? e : end;
    }
    if (end == null) {
      return null;
    }
    int count = drawn.count() - there;
    long[] feet = new long[count - 1];
    SideCheck check = head.check(lines);
    long inner = lines.start();
    for (int i = 1; i < count; i++) {
      long foot = drawn.feet()[there + i - 1] + shift;
      if (!check.jointStands(i, foot) || !check.stoneFits(i, inner, foot)) {
        return null;
      }
      feet[i - 1] = foot;
      inner = foot;
    }
    return check.endFits(count, inner, end) ? new Choice(lines, end, feet) : null;
  }
}
