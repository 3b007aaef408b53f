package headcourse.sheet.contractor;

import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.Lettering;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.job.Job;
import headcourse.job.Wall;
import headcourse.sheet.BreakLine;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.sheet.section.BuildUp;
import headcourse.sheet.section.Callouts;
import headcourse.sheet.section.Hatch;
import headcourse.sheet.section.SectionPlace;
import headcourse.sheet.section.SectionSides;
import headcourse.sheet.section.StoneLayer;
import headcourse.units.Length;
import java.util.List;

/** A level cut through the right jamb, seen from above: outside below, the opening at the left. */
final class JambSection {
  private static final double LENGTH = 170;
  private static final double LEFT = 20;

  /** Paper over it for the word that tells the inside, mm. */
  private static final double INSIDE = 4;

  private static final Lettering SIZE = new Lettering(3.5, true);

  private final SheetContext context;
  private final Job job;
  private final BuildUp layers;
  private final double reveal;

  JambSection(SheetContext context, Length reveal) {
    this.context = context;
    this.job = context.job();
    this.layers = BuildUp.of(job);
    this.reveal = reveal.mm();
  }

  private boolean returned() {
    return job.wall().jambs() == Wall.Jambs.RETURNED;
  }

  double trueWidth() {
    return LENGTH;
  }

  double trueHeight() {
    return Math.max(layers.framing(), reveal) + 5;
  }

  private String deep() {
    return context.format().withUnit(Length.mm(reveal));
  }

  /** Where it lies with its upper left corner at a place and so much width for all. */
  SectionPlace place(Scale scale, double x, double top, double width) {
    double f = scale.factor();
    double over = returned() ? Dimensions.overshoot(deep(), SIZE, reveal * f) : 0;
    double high = Math.max(trueHeight() * f, reveal * f + over);
    Point origin = new Point(x + LEFT, top + high + INSIDE);
    Similarity view = Similarity.toPaper(f, origin);
    double elbow = view.apply(new Point(LENGTH, 0)).x() + 2;
    Callouts names = names(view, x + width - elbow - SectionPlace.LEAD);
    double bottom = Math.max(origin.y() + 7, top + names.height() + 2);
    return new SectionPlace(view, elbow, names, top, bottom);
  }

  /** Draws it. */
  void draw(Board b, SectionPlace place) {
    Similarity view = place.view();
    layers(b, view);
    if (returned()) {
      new Dimensions(b)
          .aligned(view.apply(Point.ORIGIN), view.apply(new Point(0, reveal)), 9, deep(), SIZE);
    }
    double deep = layers.framing();
    BreakLine.draw(b, view.apply(new Point(LENGTH, 0)), view.apply(new Point(LENGTH, deep)));
    Point front = view.apply(new Point(LENGTH / 2, 0));
    Point back = view.apply(new Point(LENGTH * 0.45, Math.max(deep, reveal)));
    SectionSides.level(b, context.say("contractor.outside"), new Point(front.x(), front.y() + 5));
    SectionSides.level(b, context.say("contractor.inside"), new Point(back.x(), back.y() - 2));
    place.drawNames(b);
  }

  private void layers(Board b, Similarity view) {
    double t = layers.stone();
    double[] d = layers.depths();
    double behind = returned() ? t + (layers.scratch() - layers.stone()) : 0;
    Box framing = box(view, behind, d[4], LENGTH, d[5]);
    b.outline(rect(framing), Shade.WHITE, Pen.EDGE);
    Box stud = box(view, behind, d[4], Math.min(behind + 38, LENGTH), d[5]);
    b.outline(rect(stud), Shade.STONE, Pen.EDGE);
    Hatch.crossed(b, stud);
    b.outline(rect(box(view, behind, d[3], LENGTH, d[4])), Shade.WHITE, Pen.EDGE);
    double mortar = returned() ? t + job.wall().bed().mm() : 0;
    mortar(b, box(view, mortar, d[2], LENGTH, d[3]), 1.3);
    mortar(b, box(view, returned() ? t : 0, d[1], LENGTH, d[2]), 1.7);
    Point a = view.apply(new Point(behind, d[3]));
    b.line(a, view.apply(new Point(LENGTH, d[3])), Pen.HIDDEN);
    if (returned() && reveal > t) {
      mortar(b, box(view, t, d[2], mortar, reveal), 1.7);
      mortar(b, box(view, mortar, d[3], behind, reveal), 1.3);
      Path shape =
          Path.polygon(
              view.apply(Point.ORIGIN),
              view.apply(new Point(LENGTH, 0)),
              view.apply(new Point(LENGTH, t)),
              view.apply(new Point(t, t)),
              view.apply(new Point(t, reveal)),
              view.apply(new Point(0, reveal)));
      b.outline(shape, Shade.KEY, Pen.OUTLINE);
      Hatch.lines(b, box(view, 0, t, t, reveal), 2);
    } else {
      b.outline(rect(box(view, 0, 0, LENGTH, t)), Shade.KEY, Pen.OUTLINE);
    }
    Hatch.lines(b, box(view, 0, 0, LENGTH, t), 2);
  }

  private static void mortar(Board b, Box box, double spacing) {
    if (box.width() > 0.05 && box.height() > 0.05) {
      b.outline(rect(box), Shade.WHITE, Pen.FINE);
      Hatch.dots(b, box, spacing);
    }
  }

  private Callouts names(Similarity view, double column) {
    Callouts c = new Callouts(column);
    double[] d = layers.depths();
    var f = context.format();
    String[] texts = {
      StoneLayer.words(context),
      context.say("contractor.layer-bed", f.withUnit(job.wall().bed())),
      context.say("contractor.layer-scratch", f.withUnit(job.wall().scratch())),
      context.say("contractor.layer-sheathing", f.withUnit(job.wall().sheathing().thickness())),
      context.say("contractor.layer-framing", f.withUnit(job.wall().framing()))
    };
    for (int i = 0; i < texts.length; i++) {
      if (d[i + 1] > d[i]) {
        c.add(view.apply(new Point(LENGTH - 6, (d[i] + d[i + 1]) / 2)), texts[i]);
      }
    }
    c.add(view.apply(new Point(LENGTH - 18, d[3])), context.say("contractor.layer-barrier"));
    String jamb =
        returned()
            ? context.say("contractor.layer-return-jamb", f.withUnit(Length.mm(reveal)))
            : context.say("contractor.layer-plain-jamb");
    Point at = new Point(layers.stone() / 2, returned() ? reveal - 4 : layers.stone() * 0.25);
    c.add(view.apply(at), jamb);
    return c;
  }

  static Box box(Similarity view, double x0, double y0, double x1, double y1) {
    return Box.around(List.of(view.apply(new Point(x0, y0)), view.apply(new Point(x1, y1))));
  }

  static Path rect(Box b) {
    return Path.rect(b.minX(), b.minY(), b.width(), b.height());
  }
}
