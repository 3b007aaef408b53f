package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.Dimensions.Size;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Label;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** One end of a head with the line that the wall stones beside it are cut to. */
final class SkewbackFigure {
  private static final double INSIDE = 14;
  private static final double OUTSIDE = 30;
  private static final double ABOVE = 6;
  private static final double BELOW = 22;

  private final SheetContext c;
  private final Skewback cut;
  private final PlacedStone end;
  private final boolean fanned;
  private final Box box;
  private final Scale scale;
  private final double width;

  SkewbackFigure(SheetContext c, HeadWork head, Skewback cut, double width, double height) {
    this.c = c;
    this.width = width;
    this.cut = cut;
    this.end = head.layout().end(cut.side());
    this.fanned = head.layout().fanned();
    Point from = place(cut.from());
    Point to = place(cut.to());
    this.box =
        end.outline()
            .bounds()
            .union(Box.around(List.of(from, to, place(new Point(cut.jamb(), from.y())))));
    this.scale =
        Scale.largest(
            c.job().units(),
            box.width(),
            box.height(),
            width - INSIDE - OUTSIDE,
            height - ABOVE - BELOW);
  }

  private Point place(Point p) {
    return cut.side() == Side.LEFT ? p.mirrored() : p;
  }

  String scale() {
    return scale.name();
  }

  double height() {
    return ABOVE + box.height() * scale.factor() + BELOW;
  }

  void draw(Board b, double x, double y) {
    double k = scale.factor();
    boolean left = cut.side() == Side.LEFT;
    double x0 = x + (left ? OUTSIDE : INSIDE) - box.minX() * k;
    Similarity view = Similarity.toPaper(k, new Point(x0, y + ABOVE + box.maxY() * k));
    b.outline(end.outline().transformed(view), Shade.STONE, Pen.EDGE);
    Point from = view.apply(place(cut.from()));
    Point to = view.apply(place(cut.to()));
    Point jamb = view.apply(place(new Point(cut.jamb(), cut.from().y())));
    int sign = cut.side().sign();
    b.stroke(Path.through(to, from, jamb, new Point(jamb.x(), jamb.y() + 20)), Pen.OUTLINE);
    if (cut.plumb() > 0.5) {
      double shown = Math.min(cut.plumb() * k, to.y() - y - ABOVE);
      b.line(to, new Point(to.x(), to.y() - shown), Pen.OUTLINE);
    }
    sizes(new Dimensions(b, new Box(x, y, x + width, y + height())), from, to, sign);
    labels(b, view, from, to, sign, x);
    double level = view.apply(Point.ORIGIN).y();
    double reach = left ? box.minX() : box.maxX();
    double out = view.apply(new Point(reach, 0)).x() + sign * 22;
    out = Math.max(x, Math.min(x + width, out));
    b.lineAround(new Point(jamb.x() - sign * 12, level), new Point(out, level), Pen.CENTRE);
  }

  private void sizes(Dimensions d, Point from, Point to, int sign) {
    LengthFormat f = c.format();
    Lettering l = Lettering.DIMENSION;
    List<Size> sizes = new ArrayList<>();
    Point corner = new Point(to.x(), from.y());
    if (Math.abs(corner.x() - from.x()) > 1) {
      String text = f.tape(f.grid().snap(cut.out()));
      sizes.add(
          sign > 0 ? new Size(from, corner, -12, text, l) : new Size(corner, from, -12, text, l));
    }
    if (from.y() - to.y() > 2) {
      String text = f.tape(f.grid().snap(cut.up()));
      sizes.add(new Size(corner, to, -sign * 9, text, l));
    }
    d.all(sizes);
  }

  private void labels(Board b, Similarity view, Point from, Point to, int sign, double x) {
    Align align = sign > 0 ? Align.START : Align.END;
    List<Label> marks = new ArrayList<>();
    Point middle = view.apply(end.outline().bounds().centre());
    for (double h : new double[] {5, 3.5, 2.5}) {
      for (double dx : new double[] {0, 3, -3, 6, -6}) {
        Point at = new Point(middle.x() + dx, middle.y() + h / 2);
        marks.add(new Label(at, end.mark(), new Lettering(h, true), Align.MIDDLE, 0));
      }
    }
    b.firstFree(marks, 0.3);
    String line = c.words().each(fanned ? "skew.soffit-line" : "skew.springing-line").get(0);
    List<Label> names = new ArrayList<>();
    double level = view.apply(new Point(0, Math.min(0, cut.from().y()))).y();
    for (double dx : new double[] {3, 8, 14}) {
      for (double dy : new double[] {4, 19}) {
        names.add(
            new Label(new Point(from.x() + sign * dx, level + dy), line, Lettering.NOTE, align, 0));
      }
    }
    names.removeIf(n -> LabelShape.bounds(n).minX() < x || LabelShape.bounds(n).maxX() > x + width);
    b.firstFree(names, 0.3);
    if (!cut.level()) {
      String angle = LengthFormat.degrees(cut.fromHorizontal());
      List<Label> tries = new ArrayList<>();
      for (double t : new double[] {0.35, 0.5, 0.65, 0.2}) {
        Point on = from.towards(to, t);
        for (double dx : new double[] {2, 3.5, 5, 12}) {
          Point at = new Point(on.x() + sign * dx, on.y() + 1.8);
          tries.add(new Label(at, angle, Lettering.DIMENSION, align, 0));
        }
      }
      b.firstFree(tries, 0.3);
    }
  }
}
