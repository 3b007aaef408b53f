package headcourse.sheet.order;

import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Stock;
import headcourse.sheet.SheetContext;
import headcourse.stock.StockPlan.OrderLine;
import headcourse.units.Length;
import java.util.List;

/**
 * A blank seen aslant, its legs named by the letters that head the columns of sizes: the face in
 * front, the return running back from its lower edge, the arris where they meet.
 */
final class BlankDrawing {
  /** The scheme's sizes on paper, mm: legs can be told apart whatever the blank's own sizes. */
  record Size(double length, double face, double back, double thick) {
    static final Size FULL = new Size(84, 50, 34, 7);

    /** Two stand side by side. */
    static final Size SMALL = new Size(42, 27, 20, 4);
  }

  /** What stands at a leg. */
  enum Said {
    /** Its letter, which heads a column of the table. */
    LETTER,
    /** Letter and name. */
    NAME,
    /** Letter, name and size: where one line of the table is drawn, no more. */
    SIZE,
    /** Its letter, and name and size beside the drawing. */
    LIST
  }

  /** What runs back is drawn shorter, up to the right. */
  private static final double BACK_X = 0.55;

  private static final double BACK_Y = 0.4;

  private static final Lettering NAMES = new Lettering(3.5, true);
  private static final double LEFT = 24;
  private static final double TOP = 6;
  private static final double BELOW = 16;
  private static final double BESIDE = 30;

  private final SheetContext context;
  private final OrderLine line;
  private final Size size;
  private final Said said;

  BlankDrawing(SheetContext context, OrderLine line, Size size, Said said) {
    this.context = context;
    this.line = line;
    this.size = size;
    this.said = said;
  }

  private boolean corner() {
    return line.what() == Stock.Kind.CORNER;
  }

  private double back() {
    return corner() ? size.back : size.thick;
  }

  double height() {
    return TOP + size.face + back() * BACK_Y + BELOW;
  }

  private record Place(double x, double y, double z) {}

  void draw(Board b, double left, double top) {
    double l = size.length;
    double h = size.face;
    double t = size.thick;
    double r = back();
    double x0 = left + LEFT;
    double y0 = top + TOP + h + r * BACK_Y;
    View v = new View(x0, y0);
    // Painted from the back to the front: the end tells what it is.
    b.outline(v.area(p(0, 0, 0), p(l, 0, 0), p(l, h, 0), p(0, h, 0)), Shade.WHITE, Pen.OUTLINE);
    b.outline(v.area(p(0, h, 0), p(l, h, 0), p(l, h, t), p(0, h, t)), Shade.STONE, Pen.EDGE);
    Path end =
        corner()
            ? v.area(p(l, 0, 0), p(l, 0, r), p(l, t, r), p(l, t, t), p(l, h, t), p(l, h, 0))
            : v.area(p(l, 0, 0), p(l, 0, t), p(l, h, t), p(l, h, 0));
    b.outline(end, Shade.KEY, Pen.CUT);
    Dimensions d = new Dimensions(b);
    d.all(
        List.of(
            new Dimensions.Size(
                v.at(p(0, 0, 0)),
                v.at(p(l, 0, 0)),
                -8,
                say(corner() ? "arris" : "length", line.length()),
                NAMES),
            new Dimensions.Size(
                v.at(p(0, 0, 0)), v.at(p(0, h, 0)), 8, say("f", line.face()), NAMES)));
    if (corner()) {
      name(b, v.at(p(l, t * 0.5, r * 0.7)), 12, 4, say("r", line.returnLeg()));
    }
    String scheme = context.say("order.scheme");
    b.text(x0, y0 + BELOW - 1, scheme, Lettering.NOTE, Align.START);
    name(b, v.at(p(l, h - 2, t * 0.5)), 12, -3, say("t", line.thickness()));
    if (said == Said.LIST) {
      list(b, v.at(p(l, h, r)).x() + BESIDE, y0 - h);
    }
  }

  private void list(Board b, double x, double top) {
    double y = top;
    String run = corner() ? "arris" : "length";
    for (String row :
        List.of(
            sized(run, line.length()),
            sized("f", line.face()),
            corner() ? sized("r", line.returnLeg()) : "",
            sized("t", line.thickness()))) {
      if (!row.isEmpty()) {
        b.text(x, y, row, NAMES, Align.START);
        y += NAMES.height() * 1.7;
      }
    }
  }

  // A leader to a leg that runs back, where a dimension would be foreshortened.
  private static void name(Board b, Point at, double dx, double dy, String text) {
    Point to = new Point(at.x() + dx, at.y() + dy);
    b.line(at, to, Pen.FINE);
    b.fill(Path.circle(at, 0.6), Shade.BLACK);
    b.text(to.x() + 1, to.y() + 1.2, text, NAMES, Align.START);
  }

  // In the first language: the letter leads to the table's heads, which say it in both.
  private String say(String letter, Length length) {
    String name = context.label("order." + letter);
    return switch (said) {
      case LETTER, LIST -> name.substring(0, 1);
      case NAME -> name;
      case SIZE -> sized(letter, length);
    };
  }

  private String sized(String letter, Length length) {
    return context.label("order." + letter) + " " + context.format().withUnit(length);
  }

  private static Place p(double x, double y, double z) {
    return new Place(x, y, z);
  }

  /** From the scheme to paper. */
  private record View(double x0, double y0) {
    Point at(Place p) {
      return new Point(x0 + p.x + p.z * BACK_X, y0 - p.y - p.z * BACK_Y);
    }

    Path area(Place... places) {
      return Path.polygon(java.util.Arrays.stream(places).map(this::at).toList());
    }
  }
}
