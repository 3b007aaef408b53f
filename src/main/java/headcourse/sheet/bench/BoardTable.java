package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.layout.Bearing;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.ColumnShares;
import headcourse.sheet.SheetContext;
import headcourse.sheet.Table;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A head's running marks from the centre line as a table: left, white, right. */
final class BoardTable {
  /** White between left and right, over what a column of figures takes. */
  private static final double BETWEEN = 0.3;

  /** Of what a column of figures takes: both languages of its last row, a line each. */
  private static final double MARKS = 1.6;

  private BoardTable() {}

  static Table of(SheetContext c, HeadWork head, Lettering cell) {
    boolean joints = joints(head);
    List<PlacedStone> left = side(head, Side.LEFT);
    List<PlacedStone> right = side(head, Side.RIGHT);
    List<List<String>> rows = new ArrayList<>();
    head.layout().stones().stream()
        .filter(s -> s.side() == Side.CENTRE)
        .forEach(
            s -> {
              var f = s.feet();
              rows.add(
                  row(
                      joints,
                      List.of(s.mark(), "", tape(c, f.leftSoffit()), tape(c, f.leftTop())),
                      List.of(s.mark(), "", tape(c, f.rightSoffit()), tape(c, f.rightTop()))));
            });
    for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
      rows.add(row(joints, cells(c, left, i, true), cells(c, right, i, false)));
    }
    String jamb = c.say("board.jamb");
    rows.add(
        row(
            joints,
            List.of(jamb, "", tape(c, head.layout().jamb(Side.LEFT)), ""),
            List.of(jamb, "", tape(c, head.layout().jamb(Side.RIGHT)), "")));
    rows.add(row(joints, bears(c, head, Side.LEFT), bears(c, head, Side.RIGHT)));
    List<Table.Column> columns = new ArrayList<>(columns(c, "board.left", joints));
    columns.add(new Table.Column("", BETWEEN, Align.START, false));
    columns.addAll(columns(c, "board.right", joints));
    double room = c.area(c.upright()).width();
    return ColumnShares.table(columns, rows, cell, room);
  }

  private static List<Table.Column> columns(SheetContext c, String side, boolean joints) {
    List<Table.Column> columns = new ArrayList<>();
    columns.add(new Table.Column(c.say(side), MARKS, Align.START, true));
    if (joints) {
      columns.add(new Table.Column(c.say("board.from"), 1, Align.END, false));
    }
    columns.add(new Table.Column(c.say("board.to"), 1, Align.END, true));
    columns.add(new Table.Column(c.say("board.top"), 1, Align.END, false));
    return columns;
  }

  // Left and right, with white between, so that no figure is read with the other side's mark.
  private static List<String> row(boolean joints, List<String> left, List<String> right) {
    List<String> row = new ArrayList<>();
    for (List<String> side : List.of(left, List.of(""), right)) {
      row.addAll(side);
      if (!joints && side.size() > 1) {
        row.remove(row.size() - side.size() + 1);
      }
    }
    return row;
  }

  // Where stones stand dry each begins where the one before it ends, and that is said once.
  private static boolean joints(HeadWork head) {
    for (Side side : new Side[] {Side.LEFT, Side.RIGHT}) {
      Length before = null;
      for (PlacedStone s : side(head, side)) {
        boolean left = side == Side.LEFT;
        Length from = left ? s.feet().rightSoffit() : s.feet().leftSoffit();
        if (before != null && !before.equals(from)) {
          return true;
        }
        before = left ? s.feet().leftSoffit() : s.feet().rightSoffit();
      }
    }
    return false;
  }

  private static String tape(SheetContext c, Length at) {
    return c.format().tape(at.abs());
  }

  // An arch bears at the foot of its skewback, on the extrados; a jack arch on both lines.
  private static List<String> bears(SheetContext c, HeadWork head, Side side) {
    Bearing bearing = head.layout().bearing(side);
    String on = c.format().tape(bearing.onWall(c.format().grid()));
    String top = c.format().tape(bearing.onTop(c.format().grid()));
    boolean curved = head.layout().curved();
    boolean both = curved || head.layout().fanned();
    return List.of(c.say("board.bears"), "", curved ? "" : on, both ? top : "");
  }

  private static List<PlacedStone> side(HeadWork head, Side side) {
    return head.layout().stones().stream()
        .filter(s -> s.side() == side)
        .sorted(Comparator.comparingInt(PlacedStone::index))
        .toList();
  }

  private static List<String> cells(SheetContext c, List<PlacedStone> side, int i, boolean left) {
    if (i >= side.size()) {
      return List.of("", "", "", "");
    }
    PlacedStone s = side.get(i);
    var f = s.feet();
    Length from = left ? f.rightSoffit() : f.leftSoffit();
    Length to = left ? f.leftSoffit() : f.rightSoffit();
    Length top = left ? f.leftTop() : f.rightTop();
    return List.of(s.mark(), tape(c, from), tape(c, to), tape(c, top));
  }
}
