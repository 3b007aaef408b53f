package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.drawing.Mark.Align;
import headcourse.layout.Side;
import headcourse.rules.Closer;
import headcourse.rules.CourseClosers;
import headcourse.sheet.SheetContext;
import headcourse.sheet.Table.Column;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** How each course of the wall closes against the ends of a head. */
final class ClosersTable {
  private final SheetContext context;
  private final LengthFormat format;
  private final List<Closer> closers;
  private final boolean beyond;

  ClosersTable(SheetContext context, HeadWork head) {
    this.context = context;
    this.format = context.format();
    this.closers = CourseClosers.of(context.job(), head);
    this.beyond = closers.stream().anyMatch(c -> c.under().isPositive() || c.over().isPositive());
  }

  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(context.say("wall.side"), 20, Align.START, true));
    columns.add(new Column(context.say("wall.course"), 22, Align.START, true));
    columns.add(new Column(context.say("wall.course-between"), 38, Align.START, false));
    columns.add(new Column(context.say("wall.closer-begins"), 42, Align.START, true));
    columns.add(new Column(context.say("wall.closer-cut"), 48, Align.START, false));
    if (beyond) {
      columns.add(new Column(context.say("wall.closer-rest"), 40, Align.START, false));
    }
    return columns;
  }

  /** Courses one over the other that close against a plumb end alike share a row. */
  List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < closers.size(); ) {
      int last = i;
      while (last + 1 < closers.size() && alike(closers.get(last), closers.get(last + 1))) {
        last++;
      }
      rows.add(row(closers.get(i), closers.get(last)));
      i = last + 1;
    }
    return rows;
  }

  private static boolean alike(Closer a, Closer b) {
    return a.side() == b.side()
        && a.lower().equals(a.upper())
        && b.lower().equals(b.upper())
        && a.lower().equals(b.lower())
        && a.over().isZero()
        && b.under().isZero();
  }

  private List<String> row(Closer c, Closer last) {
    List<String> row = new ArrayList<>();
    row.add(context.say(c.side() == Side.LEFT ? "wall.left" : "wall.right"));
    row.add(pair(Integer.toString(c.course()), Integer.toString(last.course())));
    row.add(pair(format.tape(c.from()), format.tape(last.to())));
    row.add(pair(format.tape(c.lower()), format.tape(last.upper())));
    row.add(cut(c));
    if (beyond) {
      row.add(rest(c, last));
    }
    return row;
  }

  private String pair(String a, String b) {
    return a.equals(b) ? a : context.say("wall.wedge", a, b);
  }

  private String cut(Closer c) {
    if (format.grid().nearest(c.offset()) == 0) {
      return context.say("wall.closer-cut-plumb");
    }
    return context.say(
        c.offset().isPositive() ? "wall.closer-cut-out" : "wall.closer-cut-in",
        format.tape(c.offset().abs()),
        format.tape(c.height()));
  }

  private String rest(Closer c, Closer last) {
    List<String> all = new ArrayList<>();
    if (c.under().isPositive()) {
      all.add(context.say("wall.closer-under", format.tape(c.under())));
    }
    if (last.over().isPositive()) {
      all.add(context.say("wall.closer-over", format.tape(last.over())));
    }
    return String.join("\n", all);
  }
}
