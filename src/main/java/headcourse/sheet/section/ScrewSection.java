package headcourse.sheet.section;

import headcourse.bench.Anchor;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.Lettering;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.job.Job;
import headcourse.sheet.BreakLine;
import headcourse.sheet.Holds;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;

/** A level cut at a screw, seen from above: from its slot through every layer to what holds it. */
public final class ScrewSection {
  private static final double LEFT = 24;

  /** Paper over it for the word that tells the inside, mm. */
  private static final double INSIDE = 6;

  private static final Lettering SIZE = new Lettering(2.5, true);

  private final SheetContext context;
  private final Job job;
  private final Notch notch;
  private final BuildUp layers;
  private final double length;

  /**
   * A section.
   *
   * @param piece the stone, and {@code notch} a slot of it that has a screw
   */
  public ScrewSection(SheetContext context, Piece piece, Notch notch) {
    this.context = context;
    this.job = context.job();
    this.notch = notch;
    this.layers = BuildUp.of(job, piece.stone().proud().max(Length.ZERO));
    this.length = Math.max(70, tip().x() + 25);
  }

  /** True width, mm. */
  public double trueWidth() {
    return length;
  }

  /** True height, mm: some way behind the tip. */
  public double trueHeight() {
    return Math.max(layers.sheathing(), tip().y()) + 14;
  }

  /** Where it lies with its upper left corner at a place and so much width for all. */
  public SectionPlace place(Scale scale, double x, double top, double width) {
    double f = scale.factor();
    double over = Dimensions.overshoot(deepText(), SIZE, notch.penetration().mm() * f);
    double reach = (holdsFrom() + notch.penetration().mm()) * f + over;
    Point origin = new Point(x + LEFT, top + Math.max(trueHeight() * f, reach) + INSIDE);
    Similarity view = Similarity.toPaper(f, origin);
    double elbow = view.apply(new Point(length, 0)).x() + 2;
    Callouts names = names(view, x + width - elbow - SectionPlace.LEAD);
    double bottom = Math.max(origin.y() + 9, top + names.height() + 2);
    return new SectionPlace(view, elbow, names, top, bottom);
  }

  /** Draws it. */
  public void draw(Board b, SectionPlace place) {
    Similarity view = place.view();
    double[] d = layers.depths();
    Hatch.backing(b, box(view, d[4], trueHeight()), notch.anchor().behind().kind());
    if (d[4] > d[3]) {
      boolean holds = job.wall().sheathing().holds();
      b.outline(rect(box(view, d[3], d[4])), holds ? Shade.STONE : Shade.WHITE, Pen.EDGE);
    }
    for (int i : new int[] {1, 2}) {
      Box box = box(view, d[i], d[i + 1]);
      if (box.height() > 0.05) {
        b.outline(rect(box), Shade.WHITE, Pen.FINE);
        Hatch.dots(b, box, i == 1 ? 1.7 : 1.3);
      }
    }
    Box stone = box(view, 0, d[1]);
    b.outline(rect(stone), Shade.KEY, Pen.OUTLINE);
    Hatch.lines(b, stone, 2);
    screw(b, view);
    double behind = trueHeight();
    BreakLine.draw(b, view.apply(new Point(length, 0)), view.apply(new Point(length, behind)));
    Point front = view.apply(new Point(length / 2, 0));
    Point back = view.apply(new Point(length / 2, behind));
    SectionSides.level(b, context.say("contractor.outside"), new Point(front.x(), front.y() + 5));
    SectionSides.level(b, context.say("contractor.inside"), new Point(back.x(), back.y() - 3.2));
    place.drawNames(b);
  }

  private Box box(Similarity view, double from, double to) {
    Point a = view.apply(new Point(0, from));
    Point b = view.apply(new Point(length, to));
    return new Box(a.x(), b.y(), b.x(), a.y());
  }

  private static Path rect(Box box) {
    return Path.rect(box.minX(), box.minY(), box.width(), box.height());
  }

  /** Where what holds begins, mm from the face. */
  private double holdsFrom() {
    return job.wall().sheathing().holds() ? layers.scratch() : layers.sheathing();
  }

  private String deepText() {
    return Limit.MOST.withUnit(context.format(), notch.penetration());
  }

  private Vec direction() {
    return new Vec(notch.run().mm(), notch.mouth().mm()).unit();
  }

  private Point mouth() {
    return new Point(0, layers.stone() - notch.mouth().mm());
  }

  private Point tip() {
    return mouth().plus(direction().times(notch.screw().mm()));
  }

  private void screw(Board b, Similarity view) {
    double t = layers.stone();
    Point run = new Point(notch.run().mm(), t);
    Path slot = Path.polygon(view.apply(mouth()), view.apply(run), view.apply(new Point(0, t)));
    b.outline(slot, Shade.WHITE, Pen.EDGE);
    b.line(view.apply(mouth()), view.apply(tip()), new Pen(1, Pen.Pattern.SOLID));
    b.fill(Path.circle(view.apply(mouth()), 1.2), Shade.BLACK);
    new Dimensions(b)
        .aligned(
            view.apply(new Point(0, holdsFrom())),
            view.apply(new Point(0, holdsFrom() + notch.penetration().mm())),
            9,
            deepText(),
            SIZE);
  }

  private Callouts names(Similarity view, double column) {
    Callouts c = new Callouts(column);
    LengthFormat f = context.format();
    Anchor a = notch.anchor();
    Point middle = mouth().plus(direction().times(notch.screw().mm() * 0.85));
    c.add(
        view.apply(middle),
        context.say(
            w ->
                w.say(
                    "contractor.layer-screw",
                    Holds.screw(context, w, a),
                    LengthFormat.degrees(notch.slant()),
                    Holds.hold(context, w, a))));
    double[] d = layers.depths();
    String[] texts = {
      StoneLayer.words(context),
      context.say("contractor.layer-bed", f.withUnit(Length.mm(d[2] - d[1]))),
      context.say("contractor.layer-scratch", f.withUnit(job.wall().scratch())),
      context.say("contractor.layer-sheathing", f.withUnit(job.wall().sheathing().thickness()))
    };
    for (int i = 0; i < texts.length; i++) {
      if (d[i + 1] > d[i]) {
        c.add(view.apply(new Point(length - 6, (d[i] + d[i + 1]) / 2)), texts[i]);
      }
    }
    c.add(
        view.apply(new Point(length - 6, trueHeight() - 5)),
        context.say(w -> Holds.layer(w, a.behind())));
    return c;
  }
}
