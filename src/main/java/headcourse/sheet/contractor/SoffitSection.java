package headcourse.sheet.contractor;

import headcourse.bench.Piece;
import headcourse.bench.SoffitNotch;
import headcourse.bench.SoffitPiece;
import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.Lettering;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.rules.AnchorWords;
import headcourse.sheet.BreakLine;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.sheet.section.BuildUp;
import headcourse.sheet.section.Callouts;
import headcourse.sheet.section.Hatch;
import headcourse.sheet.section.SectionPlace;
import headcourse.sheet.section.SectionSides;
import headcourse.units.LengthFormat;
import java.util.Optional;

/**
 * A cut square to the wall where a soffit piece meets its face: how the two are joined, and the
 * screw that goes up from the soffit piece into what carries the opening. Outside at the left.
 */
final class SoffitSection {
  private static final double ABOVE = 45;
  private static final double LEFT = 12;
  private static final Lettering SIZE = new Lettering(2.5, true);

  private final SheetContext context;
  private final SoffitPiece soffit;
  private final double front;
  private final Optional<SoffitNotch> notch;
  private final BuildUp layers;

  /** Of a stone and its first soffit piece. */
  SoffitSection(SheetContext context, Piece piece) {
    this.context = context;
    this.soffit = piece.soffitPieces().get(0);
    this.layers = BuildUp.of(context.job());
    this.front = mitred() ? 0 : layers.stone();
    this.notch = soffit.notches().stream().filter(n -> n.anchor().screw() != null).findFirst();
  }

  private boolean mitred() {
    return soffit.joint() == SoffitPiece.Joint.MITRED;
  }

  private double back() {
    return front + soffit.depth().mm();
  }

  private double rough() {
    return layers.bed();
  }

  double trueWidth() {
    return Math.max(back(), layers.sheathing() + 40) + 8;
  }

  double trueHeight() {
    return rough() + ABOVE;
  }

  /** Where it lies with its upper left corner at a place and so much width for all. */
  SectionPlace place(Scale scale, double x, double top, double width) {
    double f = scale.factor();
    Point origin = new Point(x + LEFT, top + trueHeight() * f);
    Similarity view = Similarity.toPaper(f, origin);
    double elbow = view.apply(new Point(trueWidth(), 0)).x() + 12;
    Callouts names = names(view, x + width - elbow - SectionPlace.LEAD);
    double bottom = Math.max(origin.y() + 14, top + names.height() + 2);
    return new SectionPlace(view, elbow, names, top, bottom);
  }

  /** Draws it. */
  void draw(Board b, SectionPlace place) {
    Similarity view = place.view();
    double t = layers.stone();
    double top = trueHeight();
    Box lintel = JambSection.box(view, layers.sheathing(), rough(), trueWidth(), top);
    b.outline(JambSection.rect(lintel), Shade.STONE, Pen.EDGE);
    b.outline(
        rect(view, layers.scratch(), rough(), layers.sheathing(), top), Shade.WHITE, Pen.EDGE);
    mortar(b, JambSection.box(view, layers.bed(), rough(), layers.scratch(), top));
    mortar(b, JambSection.box(view, t, rough(), layers.bed(), top));
    mortar(b, JambSection.box(view, t, t, back(), rough()));
    b.outline(face(view, t, top), Shade.KEY, Pen.OUTLINE);
    b.outline(soffit(view, t), Shade.KEY, Pen.OUTLINE);
    Point[] pin = pin(t);
    b.line(view.apply(pin[0]), view.apply(pin[1]), new Pen(1, Pen.Pattern.SOLID));
    notch.ifPresent(n -> screw(b, view, n));
    sizes(b, place);
    Point up = view.apply(new Point(0, top));
    double low = view.apply(Point.ORIGIN).y();
    BreakLine.draw(b, up, view.apply(new Point(trueWidth(), top)));
    SectionSides.upright(
        b, context.say("contractor.outside"), new Point(up.x() - 3, up.y()), low, -1);
    Point back = view.apply(new Point(trueWidth(), top));
    SectionSides.upright(
        b, context.say("contractor.inside"), new Point(back.x() + 5, back.y()), low, 1);
    place.drawNames(b);
  }

  private static Path rect(Similarity view, double x0, double y0, double x1, double y1) {
    return JambSection.rect(JambSection.box(view, x0, y0, x1, y1));
  }

  private static void mortar(Board b, Box box) {
    if (box.height() > 0.05 && box.width() > 0.05) {
      b.outline(JambSection.rect(box), Shade.WHITE, Pen.FINE);
      Hatch.dots(b, box, 1.7);
    }
  }

  private Path face(Similarity view, double t, double top) {
    return Path.polygon(
        view.apply(Point.ORIGIN),
        view.apply(new Point(t, mitred() ? t : 0)),
        view.apply(new Point(t, top)),
        view.apply(new Point(0, top)));
  }

  private Path soffit(Similarity view, double t) {
    return Path.polygon(
        view.apply(new Point(front, 0)),
        view.apply(new Point(back(), 0)),
        view.apply(new Point(back(), t)),
        view.apply(new Point(t, t)));
  }

  // Square to a mitre; level through a butt joint. Neither comes near a face that is seen.
  private Point[] pin(double t) {
    return mitred()
        ? new Point[] {new Point(0.8 * t, 0.2 * t), new Point(0.3 * t, 0.7 * t)}
        : new Point[] {new Point(0.4 * t, t / 2), new Point(2 * t, t / 2)};
  }

  // Foreshortened, where it slants along the wall; a screw from the back edge slants outwards.
  private Point foot(SoffitNotch n) {
    boolean fromBack = n.edge() == SoffitNotch.Edge.BACK;
    double x = fromBack ? back() : back() - n.place().mm();
    return new Point(x, layers.stone() - n.mouth().mm());
  }

  private Point tip(SoffitNotch n) {
    Point foot = foot(n);
    double y = rough() + n.anchor().penetration().mm();
    double run =
        n.edge() == SoffitNotch.Edge.BACK ? (y - foot.y()) / Math.tan(n.slant().radians()) : 0;
    return new Point(foot.x() - run, y);
  }

  private void screw(Board b, Similarity view, SoffitNotch n) {
    Point foot = view.apply(foot(n));
    b.line(foot, view.apply(tip(n)), new Pen(1, Pen.Pattern.SOLID));
    b.fill(Path.circle(foot, 1.2), Shade.BLACK);
  }

  // No size runs into the names.
  private void sizes(Board b, SectionPlace place) {
    Similarity view = place.view();
    double names = place.elbow() + SectionPlace.LEAD;
    Dimensions d = new Dimensions(b, new Box(-1e6, -1e6, names - 1, 1e6));
    String deep = context.format().withUnit(soffit.depth());
    d.aligned(view.apply(new Point(front, 0)), view.apply(new Point(back(), 0)), -8, deep, SIZE);
    notch.ifPresent(
        n -> {
          double x = trueWidth();
          LengthFormat f = context.format();
          Point from = view.apply(new Point(x, rough()));
          Point to = view.apply(new Point(x, tip(n).y()));
          String in = f.withUnit(f.grid().ticks(f.grid().floor(n.anchor().penetration())));
          d.aligned(from, to, -7, in, SIZE);
        });
  }

  private Callouts names(Similarity view, double column) {
    Callouts c = new Callouts(column);
    LengthFormat f = context.format();
    double t = layers.stone();
    Point[] pin = pin(t);
    c.add(view.apply(pin[0].towards(pin[1], 0.5)), context.say("contractor.soffit-pins"));
    c.add(
        view.apply(new Point(back() - 4, t * 0.22)),
        context.say(
            "contractor.soffit-piece-" + soffit.joint().word(),
            f.withUnit(soffit.depth()),
            f.withUnit(soffit.thickness())));
    c.add(
        view.apply(new Point(back() - 6, (t + rough()) / 2)),
        context.say("contractor.layer-bed", f.withUnit(context.job().wall().bed())));
    c.add(
        view.apply(new Point(layers.sheathing() + 6, trueHeight() - 6)),
        context.say("contractor.layer-lintel"));
    notch.ifPresentOrElse(
        n ->
            c.add(
                view.apply(foot(n).towards(tip(n), 0.7)),
                context.say(
                    w ->
                        w.say(
                            "contractor.soffit-screw",
                            f.withUnit(n.anchor().screw()),
                            LengthFormat.degrees(n.slant()),
                            AnchorWords.holds(w, n.anchor())))),
        () ->
            c.add(
                view.apply(new Point(back() - 10, t * 0.8)),
                context.say("contractor.soffit-no-screw")));
    return c;
  }
}
