package headcourse.sheet.wall;

import headcourse.bench.Drift;
import headcourse.bench.HeadWork;
import headcourse.bench.StackUp;
import headcourse.drawing.Mark.Align;
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
import java.util.Comparator;
import java.util.List;

/** Where the ends may land, and how far out every third stone may be on the way there. */
final class StackUpTables {
  private final SheetContext context;
  private final HeadWork head;
  private final LengthFormat fine;
  private final boolean curved;
  private final boolean bears;

  StackUpTables(SheetContext context, HeadWork head) {
    this.context = context;
    this.head = head;
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
    return (context.job().setting().dry() ? "wall.stack-up-text" : "wall.stack-up-text-mortar")
        + (curved ? "-arch" : "");
  }

  /** What is said above the stones on the way. */
  String trimKey() {
    return curved ? "wall.trim-arch" : "wall.trim";
  }

  List<Column> endColumns() {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(context.say("wall.side"), 30, Align.START, true));
    columns.add(new Column(context.say("wall.stones"), 22, Align.END, false));
    columns.add(new Column(context.say("wall.at-worst"), 28, Align.START, false));
    columns.add(new Column(context.say("wall.likely"), 32, Align.START, false));
    if (bears) {
      columns.add(new Column(context.say("wall.on-wall-between"), 50, Align.START, true));
    }
    if (!curved) {
      columns.add(new Column(context.say("wall.jamb-clear"), 32, Align.START, true));
    }
    return columns;
  }

  List<List<String>> ends() {
    List<List<String>> rows = new ArrayList<>();
    for (StackUp s : head.stackUps()) {
      List<String> row = new ArrayList<>();
      row.add(context.say(s.side() == Side.LEFT ? "wall.left" : "wall.right"));
      row.add(Integer.toString(s.stones()));
      row.add("± " + fine(s.worst()));
      row.add("± " + fine(s.likely()));
      if (bears) {
        row.add(between(s));
      }
      if (!curved) {
        row.add(context.say(s.jambStillClear() ? "wall.yes" : "wall.no"));
      }
      rows.add(row);
    }
    return rows;
  }

  // Measured on the wall with a tape: on the grid, and never within what may really be.
  private String between(StackUp s) {
    Grid grid = context.format().grid();
    return context.say(
        "wall.between",
        context.format().withUnit(grid.ticks(grid.floor(s.bearingLeast()))),
        context.format().withUnit(grid.ticks(grid.ceil(s.bearingGreatest()))));
  }

  List<Column> driftColumns() {
    return List.of(
        new Column(context.say("wall.after-stone"), 30, Align.START, true),
        new Column(
            context.say(curved ? "wall.around-crown" : "wall.must-stand-at"),
            40,
            Align.START,
            true),
        new Column(context.say("wall.out-at-most"), 36, Align.START, false),
        new Column(context.say("wall.likely-out"), 36, Align.START, false),
        new Column(context.say("wall.trim-next"), 48, Align.START, true));
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
   * @param figures where its edge stands, how far out it may be, what the next is cut to or empty
   */
  private record Check(String after, String next, List<String> figures) {
    List<String> row(String stones, String nexts) {
      List<String> row = new ArrayList<>(List.of(stones));
      row.addAll(figures.subList(0, 3));
      String cut = figures.get(3);
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

  /** The key, then every third stone, and what the next one is trimmed to at the worst. */
  private List<Check> side(Side side) {
    List<JointLine> joints =
        head.layout().joints().stream()
            .filter(j -> j.side() == side && !j.inner().isEmpty() && !j.outer().isEmpty())
            .sorted(Comparator.comparingInt(JointLine::index))
            .toList();
    List<Check> rows = new ArrayList<>();
    for (JointLine j : joints) {
      if (j.index() % 3 != 0) {
        continue;
      }
      Drift drift = Drift.at(context.job(), head.layout(), side, j.index());
      PlacedStone next = head.layout().stone(j.outer());
      Length trimmed = next.bottom().minus(drift.worst());
      rows.add(
          new Check(
              j.inner(),
              j.outer(),
              List.of(
                  context.format().tape(mark(j)),
                  "± " + fine(drift.worst()),
                  "± " + fine(drift.likely()),
                  next.fitted() ? "" : context.format().withUnit(trimmed))));
    }
    return rows;
  }
}
