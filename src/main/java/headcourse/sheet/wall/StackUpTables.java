package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.bench.StackUp;
import headcourse.drawing.Mark.Align;
import headcourse.job.Setting;
import headcourse.layout.JointLine;
import headcourse.layout.Side;
import headcourse.sheet.SheetContext;
import headcourse.sheet.Table.Column;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** Where the ends may land, and how far out every third stone may be on the way there. */
final class StackUpTables {
  private final SheetContext context;
  private final HeadWork head;
  private final LengthFormat fine;

  StackUpTables(SheetContext context, HeadWork head) {
    this.context = context;
    this.head = head;
    // Tolerances are finer than the grid; a quarter of its step still reads as a fraction.
    Length tick = context.format().grid().tick();
    this.fine =
        new LengthFormat(context.job().units(), new Grid(new Length(tick.picometres() / 4)));
  }

  /** A tolerance in words. */
  String fine(Length length) {
    return fine.withUnit(length);
  }

  List<Column> endColumns() {
    return List.of(
        new Column(context.say("wall.side"), 30, Align.START, true),
        new Column(context.say("wall.stones"), 22, Align.END, false),
        new Column(context.say("wall.at-worst"), 24, Align.START, false),
        new Column(context.say("wall.likely"), 28, Align.START, false),
        new Column(context.say("wall.on-wall-between"), 50, Align.START, true),
        new Column(context.say("wall.jamb-clear"), 36, Align.START, true));
  }

  List<List<String>> ends() {
    List<List<String>> rows = new ArrayList<>();
    for (StackUp s : head.stackUps()) {
      rows.add(
          List.of(
              context.say(s.side() == Side.LEFT ? "wall.left" : "wall.right"),
              Integer.toString(s.stones()),
              "± " + fine(s.worst()),
              "± " + fine(s.likely()),
              context.say("wall.between", fine(s.bearingLeast()), fine(s.bearingGreatest())),
              context.say(s.jambStillClear() ? "wall.yes" : "wall.no")));
    }
    return rows;
  }

  List<Column> driftColumns() {
    return List.of(
        new Column(context.say("wall.after-stone"), 30, Align.START, true),
        new Column(context.say("wall.must-stand-at"), 40, Align.START, true),
        new Column(context.say("wall.out-at-most"), 36, Align.START, false),
        new Column(context.say("wall.likely-out"), 36, Align.START, false),
        new Column(context.say("wall.left-to-go"), 40, Align.END, false));
  }

  /** Every third stone outwards; both sides in one row where they are alike. */
  List<List<String>> drift() {
    List<List<String>> left = side(Side.LEFT);
    List<List<String>> right = side(Side.RIGHT);
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
      boolean l = i < left.size();
      boolean r = i < right.size();
      if (l && r && left.get(i).subList(1, 5).equals(right.get(i).subList(1, 5))) {
        List<String> both = new ArrayList<>(left.get(i));
        both.set(0, left.get(i).get(0) + ", " + right.get(i).get(0));
        rows.add(both);
        continue;
      }
      if (l) {
        rows.add(left.get(i));
      }
      if (r) {
        rows.add(right.get(i));
      }
    }
    return rows;
  }

  // n stones off by up to ±τ with dry joints that open by up to f: at most n(τ + f), typically
  // √n·τ + n·f/2.
  private List<List<String>> side(Side side) {
    Setting setting = context.job().setting();
    double opens = setting.dry() ? setting.opens().mm() : 0;
    double cut = setting.cutTolerance().mm();
    List<JointLine> joints =
        head.layout().joints().stream()
            .filter(j -> j.side() == side && !j.inner().isEmpty() && !j.inner().equals("K"))
            .sorted(java.util.Comparator.comparingInt(JointLine::index))
            .toList();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 2; i < joints.size() - 1; i += 3) {
      JointLine j = joints.get(i);
      int n = i + 1;
      rows.add(
          List.of(
              j.inner(),
              context.format().tape(j.soffitMark()),
              "± " + fine(Length.mm(n * (cut + opens))),
              "± " + fine(Length.mm(Math.sqrt(n) * cut + n * opens / 2)),
              Integer.toString(joints.size() - n)));
    }
    return rows;
  }
}
