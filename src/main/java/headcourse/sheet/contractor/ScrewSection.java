package headcourse.sheet.contractor;

import headcourse.bench.Notch;
import headcourse.drawing.Lettering;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.sheet.Board;
import headcourse.sheet.Dimensions;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.units.LengthFormat;

/** A level cut at a screw, seen from above: how it slants from the slot into the wall. */
final class ScrewSection {
  private static final double LENGTH = 110;
  private static final double LEFT = 24;
  private static final Lettering SIZE = new Lettering(2.5, true);

  private final SheetContext context;
  private final Notch notch;
  private final BuildUp layers;

  ScrewSection(SheetContext context, Notch notch) {
    this.context = context;
    this.notch = notch;
    this.layers = BuildUp.of(context.job());
  }

  double trueWidth() {
    return LENGTH;
  }

  double trueHeight() {
    return layers.sheathing() + 45;
  }

  /** Where it lies with its upper left corner at a place and so much width for all. */
  SectionPlace place(Scale scale, double x, double top, double width) {
    double f = scale.factor();
    String deepText = context.format().withUnit(notch.penetration());
    double over = Dimensions.overshoot(deepText, SIZE, notch.penetration().mm() * f);
    double reach = (holdsFrom() + notch.penetration().mm()) * f + over;
    Point origin = new Point(x + LEFT, top + Math.max(trueHeight() * f, reach));
    Similarity view = Similarity.toPaper(f, origin);
    double elbow = view.apply(new Point(LENGTH, 0)).x() + 2;
    Callouts names = names(view, x + width - elbow - SectionPlace.LEAD);
    double bottom = Math.max(origin.y() + 9, top + names.height() + 2);
    return new SectionPlace(view, elbow, names, top, bottom);
  }

  /** Where what holds begins, mm from the face of an ordinary stone. */
  private double holdsFrom() {
    return context.job().wall().sheathing().holds() ? layers.scratch() : layers.sheathing();
  }

  /** Draws it. */
  void draw(Board b, SectionPlace place) {
    Similarity view = place.view();
    double[] d = layers.depths();
    double deep = trueHeight();
    b.outline(rect(view, 0, d[4], LENGTH, deep), Shade.WHITE, Pen.EDGE);
    b.outline(rect(view, 0, d[3], LENGTH, d[4]), Shade.WHITE, Pen.EDGE);
    for (int i : new int[] {1, 2}) {
      Box box = JambSection.box(view, 0, d[i], LENGTH, d[i + 1]);
      if (box.height() > 0.05) {
        b.outline(JambSection.rect(box), Shade.WHITE, Pen.FINE);
        Hatch.dots(b, box, 1.7);
      }
    }
    Box stone = JambSection.box(view, 0, 0, LENGTH, d[1]);
    b.outline(JambSection.rect(stone), Shade.KEY, Pen.OUTLINE);
    Hatch.lines(b, stone, 2);
    screw(b, view);
    place.drawNames(b);
  }

  private static Path rect(Similarity view, double x0, double y0, double x1, double y1) {
    return JambSection.rect(JambSection.box(view, x0, y0, x1, y1));
  }

  private Vec direction() {
    return new Vec(notch.run().mm(), notch.mouth().mm()).unit();
  }

  private Point mouth() {
    return new Point(0, layers.stone() - notch.mouth().mm());
  }

  private void screw(Board b, Similarity view) {
    double t = layers.stone();
    Point run = new Point(notch.run().mm(), t);
    Path slot = Path.polygon(view.apply(mouth()), view.apply(run), view.apply(new Point(0, t)));
    b.outline(slot, Shade.WHITE, Pen.EDGE);
    Point tip = mouth().plus(direction().times(notch.screw().mm()));
    b.line(view.apply(mouth()), view.apply(tip), new Pen(1, Pen.Pattern.SOLID));
    b.fill(Path.circle(view.apply(mouth()), 1.2), Shade.BLACK);
    LengthFormat f = context.format();
    Dimensions dims = new Dimensions(b);
    dims.aligned(
        view.apply(new Point(0, holdsFrom())),
        view.apply(new Point(0, holdsFrom() + notch.penetration().mm())),
        9,
        f.withUnit(notch.penetration()),
        SIZE);
  }

  private Callouts names(Similarity view, double column) {
    Callouts c = new Callouts(column);
    LengthFormat f = context.format();
    Point middle = mouth().plus(direction().times(notch.screw().mm() * 0.7));
    c.add(
        view.apply(middle),
        context.say(
            "contractor.layer-screw",
            f.withUnit(notch.screw()),
            LengthFormat.degrees(notch.slant()),
            f.withUnit(notch.penetration())));
    double[] d = layers.depths();
    String stone = context.job().stone().name();
    c.add(
        view.apply(new Point(LENGTH - 6, d[1] / 2)),
        context.say(
            "contractor.layer-stone", f.withUnit(context.job().stone().thickness()), stone));
    c.add(
        view.apply(new Point(LENGTH - 6, (d[1] + d[2]) / 2)),
        context.say("contractor.layer-bed", f.withUnit(context.job().wall().bed())));
    if (d[4] > d[3]) {
      c.add(
          view.apply(new Point(LENGTH - 6, (d[3] + d[4]) / 2)),
          context.say(
              "contractor.layer-sheathing",
              f.withUnit(context.job().wall().sheathing().thickness())));
    }
    c.add(
        view.apply(new Point(LENGTH - 6, trueHeight() - 8)),
        context.say("contractor.layer-framing", f.withUnit(context.job().wall().framing())));
    return c;
  }
}
