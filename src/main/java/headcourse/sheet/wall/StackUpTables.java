package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.bench.MarkChecks;
import headcourse.bench.StackUp;
import headcourse.drawing.Mark.Align;
import headcourse.job.Setting;
import headcourse.layout.Drift;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.SheetContext;
import headcourse.sheet.Table.Column;
import headcourse.sheet.elevation.HeadFigures;
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
  private final MarkChecks checks;
  private final boolean curved;
  private final boolean bears;

  StackUpTables(SheetContext context, HeadWork head) {
    this.context = context;
    this.head = head;
    this.checks = MarkChecks.of(context.job(), head.layout());
    this.curved = new HeadFigures(head, context.format()).curved();
    // A head that springs from the jambs has no end on the wall that could slip off it.
    this.bears = !curved && !(bearing(Side.LEFT).isZero() && bearing(Side.RIGHT).isZero());
    // Tolerances are finer than the grid; a quarter of its step still reads as a fraction.
    Length tick = context.format().grid().tick();
    this.fine =
        new LengthFormat(context.job().units(), new Grid(new Length(tick.picometres() / 4)));
  }

  private Length bearing(Side side) {
    return head.layout().bearing(side).onWall();
  }

  /** A tolerance in words. */
  String fine(Length length) {
    return fine.withUnit(length);
  }

  /** What is said above the ends. */
  String endsKey() {
    Setting setting = context.job().setting();
    String joints = setting.opens().isZero() ? "-mortar" : "-mortar-joints";
    return "wall.stack-up-text" + (setting.dry() ? "" : joints) + (curved ? "-arch" : "");
  }

  /** What is said above the stones on the way. */
  String trim() {
    String allowed = context.format().withUnit(checks.allowed());
    String key = curved ? "wall.trim-arch" : "wall.trim";
    // Where a stone was cut before, another than the next one is trimmed.
    boolean skips =
        checks.places().stream()
            .anyMatch(p -> p.trimmed() == null || !p.trimmed().mark().equals(p.joint().outer()));
    return context.say(
        w -> w.say(key, allowed, MarkChecks.EVERY) + (skips ? " " + w.say("wall.trim-cut") : ""));
  }

  List<Column> endColumns() {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(context.say("wall.side"), 24, Align.START, true));
    columns.add(new Column(context.say("wall.stones"), 18, Align.END, false));
    if (bears) {
      columns.add(new Column(context.say("wall.as-drawn"), 24, Align.START, false));
    }
    columns.add(new Column(context.say("wall.in-at-most"), 24, Align.START, false));
    columns.add(new Column(context.say("wall.out-at-most"), 24, Align.START, false));
    columns.add(new Column(context.say("wall.likely"), 32, Align.START, false));
    if (bears) {
      columns.add(new Column(context.say("wall.on-wall-between"), 46, Align.START, true));
    }
    if (!curved) {
      columns.add(new Column(context.say("wall.jamb-clear"), 26, Align.START, true));
    }
    return columns;
  }

  List<List<String>> ends() {
    List<List<String>> rows = new ArrayList<>();
    for (StackUp s : head.stackUps()) {
      List<String> row = new ArrayList<>();
      row.add(context.say(s.side() == Side.LEFT ? "wall.left" : "wall.right"));
      row.add(Integer.toString(s.stones()));
      // Measured on the wall with a tape, so on the grid, and what makes it up as well.
      LengthFormat tape = context.format();
      StackUp.Printed p = s.on(tape.grid());
      if (bears) {
        row.add(tape.withUnit(p.bearing()));
      }
      row.add("− " + tape.withUnit(p.inward()));
      row.add("+ " + tape.withUnit(p.outward()));
      row.add(likely(s.drift()));
      if (bears) {
        row.add(context.say("wall.between", tape.withUnit(p.least()), tape.withUnit(p.greatest())));
      }
      if (!curved) {
        row.add(context.say(s.jambStillClear() ? "wall.yes" : "wall.no"));
      }
      rows.add(row);
    }
    return rows;
  }

  /** Where it is likely to stand, and how far about that. */
  private String likely(Drift drift) {
    String about = "± " + fine(drift.likely());
    String mean = fine(drift.mean());
    return mean.equals(fine(Length.ZERO)) ? about : "+ " + mean + " " + about;
  }

  List<Column> driftColumns() {
    return List.of(
        new Column(context.say("wall.after-stone"), 30, Align.START, true),
        new Column(
            context.say(curved ? "wall.around-crown" : "wall.must-stand-at"),
            40,
            Align.START,
            true),
        new Column(context.say("wall.in-at-most"), 24, Align.START, false),
        new Column(context.say("wall.out-at-most"), 24, Align.START, false),
        new Column(context.say("wall.likely"), 34, Align.START, false),
        new Column(context.say("wall.trim-next"), 44, Align.START, true));
  }

  /** Every third stone outwards; both sides in one row where they are alike. */
  List<List<String>> drift() {
    List<Check> left = side(Side.LEFT);
    List<Check> right = side(Side.RIGHT);
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
      Check l = i < left.size() ? left.get(i) : null;
      Check r = i < right.size() ? right.get(i) : null;
      if (l != null && r != null && l.figures.equals(r.figures)) {
        rows.add(l.row(both(l.after, r.after), both(l.next, r.next)));
        continue;
      }
      if (l != null) {
        rows.add(l.row(l.after, l.next));
      }
      if (r != null) {
        rows.add(r.row(r.after, r.next));
      }
    }
    return rows;
  }

  private static String both(String left, String right) {
    return left.equals(right) ? left : left + ", " + right;
  }

  /**
   * What is checked at a stone.
   *
   * @param after the stone
   * @param next the one beyond it, that takes up what is out
   * @param figures where its edge stands, how far in and out it may be and is likely to be, what
   *     the next is cut to or empty
   */
  private record Check(String after, String next, List<String> figures) {
    List<String> row(String stones, String nexts) {
      List<String> row = new ArrayList<>(List.of(stones));
      row.addAll(figures.subList(0, 4));
      String cut = figures.get(4);
      row.add(cut.isEmpty() ? "" : nexts + ": " + cut);
      return row;
    }
  }

  // Along a curved soffit a tape goes round; on a level one it lies along the line.
  private Length mark(JointLine j) {
    if (!curved) {
      return j.soffitMark();
    }
    return head.layout().curve().around().stream()
        .filter(a -> a.side() == j.side() && a.index() == j.index())
        .map(a -> context.format().grid().snap(a.distance()))
        .findFirst()
        .orElse(j.soffitMark());
  }

  /** Each check of a side, and what the next stone is trimmed to at the worst. */
  private List<Check> side(Side side) {
    List<Check> rows = new ArrayList<>();
    for (MarkChecks.Place place : checks.on(side)) {
      JointLine j = place.joint();
      Drift drift = Drift.at(context.job(), head.layout(), side, j.index());
      PlacedStone next = place.trimmed();
      // Rounded up to what a tape shows, so that it can be taken off.
      Grid grid = context.format().grid();
      Length out = grid.ticks(grid.ceil(drift.outward()));
      rows.add(
          new Check(
              j.inner(),
              next == null ? "" : next.mark(),
              List.of(
                  context.format().tape(mark(j)),
                  "− " + context.format().withUnit(grid.ticks(grid.ceil(drift.inward()))),
                  "+ " + context.format().withUnit(out),
                  likely(drift),
                  next == null ? "" : context.format().withUnit(next.bottom().minus(out)))));
    }
    return rows;
  }
}
