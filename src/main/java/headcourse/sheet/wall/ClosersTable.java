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
  private final HeadWork head;
  private final LengthFormat format;

  ClosersTable(SheetContext context, HeadWork head) {
    this.context = context;
    this.head = head;
    this.format = context.format();
  }

  List<Column> columns() {
    return List.of(
        new Column(context.say("wall.side"), 20, Align.START, true),
        new Column(context.say("wall.course"), 18, Align.END, true),
        new Column(context.say("wall.course-between"), 38, Align.START, false),
        new Column(context.say("wall.closer-begins"), 38, Align.START, true),
        new Column(context.say("wall.closer-cut"), 36, Align.START, false),
        new Column(context.say("wall.closer-rest"), 40, Align.START, false));
  }

  List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (Closer c : CourseClosers.of(context.job(), head)) {
      rows.add(
          List.of(
              context.say(c.side() == Side.LEFT ? "wall.left" : "wall.right"),
              Integer.toString(c.course()),
              pair(format.tape(c.from()), format.tape(c.to())),
              pair(format.tape(c.lower()), format.tape(c.upper())),
              cut(c),
              rest(c)));
    }
    return rows;
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

  private String rest(Closer c) {
    List<String> all = new ArrayList<>();
    if (c.under().isPositive()) {
      all.add(context.say("wall.closer-under", format.tape(c.under())));
    }
    if (c.over().isPositive()) {
      all.add(context.say("wall.closer-over", format.tape(c.over())));
    }
    return String.join("\n", all);
  }
}
