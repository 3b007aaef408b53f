package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.Lettering;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.job.Backing;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.FaceEdge;
import headcourse.layout.Role;
import headcourse.sheet.BreakLine;
import headcourse.sheet.Holds;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.sheet.elevation.LayerChain;
import headcourse.sheet.section.BackingBands;
import headcourse.sheet.section.BuildUp;
import headcourse.sheet.section.Callouts;
import headcourse.sheet.section.Hatch;
import headcourse.sheet.section.SectionPlace;
import headcourse.sheet.section.SectionSides;
import headcourse.sheet.section.StoneLayer;
import java.util.List;
import java.util.Optional;

/**
 * A cut through the head, square to the wall: outside at the left, layers from the face inwards.
 */
final class HeadSection {
  private static final Lettering SIZE = new Lettering(3.5, true);
  private static final double ABOVE = 45;
  private static final double BELOW = 14;
  private static final double LEFT = 20;

  private final SheetContext context;
  private final Job job;
  private final Opening opening;
  private final HeadWork head;
  private final BuildUp layers;
  private final OthersWork others;
  private final double height;
  private final boolean keyed;

  HeadSection(SheetContext context, HeadWork head) {
    this(context, head, true);
  }

  /** With its key behind it or without: without, heads of other keys are alike. */
  HeadSection(SheetContext context, HeadWork head, boolean keyed) {
    this.keyed = keyed;
    this.context = context;
    this.job = context.job();
    this.head = head;
    this.opening = head.layout().opening();
    this.layers = BuildUp.of(job);
    this.others = new OthersWork(context, job.info().contract().of(opening));
    this.height = opening.head().height().mm();
  }

  private HeadSpec.Key key() {
    return keyed ? opening.head().key() : null;
  }

  private double proud() {
    HeadSpec.Key key = key();
    return key == null ? 0 : key.proud().mm();
  }

  private double depth() {
    return Math.max(layers.framing(), opening.reveal().mm()) + 12;
  }

  double trueWidth() {
    return proud() + depth();
  }

  double trueHeight() {
    return ABOVE + height + BELOW;
  }

  /** Paper beyond the true size that the dimensions take, below and above. */
  static double margins() {
    return 38;
  }

  private LayerChain chain() {
    return new LayerChain(context.format(), BuildUp.thicknesses(job));
  }

  /** Where it lies with its upper left corner at a place and so much width for all. */
  SectionPlace place(Scale scale, double x, double top, double width) {
    double f = scale.factor();
    double above = chain().depth(layers.depths(), f) + 3;
    Point origin = new Point(x + LEFT + proud() * f, top + above + (ABOVE + height) * f);
    Similarity view = Similarity.toPaper(f, origin);
    String deep = context.format().withUnit(headcourse.units.Length.mm(returned()));
    double over = Dimensions.overshoot(deep, SIZE, returned() * f);
    double clear = view.apply(new Point(returned(), 0)).x() + over;
    double elbow = Math.max(view.apply(new Point(depth(), 0)).x() + 5, clear);
    Callouts names = names(view, x + width - elbow - SectionPlace.LEAD);
    double low = origin.y() + BELOW * f + 18;
    double bottom = Math.max(low, top + above + names.height() + 2);
    return new SectionPlace(view, elbow, names, top + above, bottom);
  }

  /** Draws it. */
  void draw(Board board, SectionPlace place) {
    layers(board, place.view());
    chain().draw(board, place.view(), layers.depths(), height + ABOVE);
    sizes(board, place.view());
    double top = height + ABOVE;
    BreakLine.draw(
        board,
        place.view().apply(new Point(0, top)),
        place.view().apply(new Point(layers.framing(), top)));
    sides(board, place.view());
    place.drawNames(board);
  }

  private static Box box(Similarity view, double x0, double y0, double x1, double y1) {
    return Box.around(List.of(view.apply(new Point(x0, y0)), view.apply(new Point(x1, y1))));
  }

  private static Path rect(Box b) {
    return Path.rect(b.minX(), b.minY(), b.width(), b.height());
  }

  private double rough() {
    return opening.head().soffit() == HeadSpec.Soffit.NONE
        ? 0
        : layers.stone() + job.wall().bed().mm();
  }

  private void layers(Board b, Similarity view) {
    double t = layers.stone();
    double top = height + ABOVE;
    double rough = rough();
    if (BackingBands.said(job.wall())) {
      for (BackingBands.Band band : bands()) {
        Box box = box(view, layers.sheathing(), band.from(), layers.framing(), band.to());
        Hatch.backing(b, box, band.what().kind());
      }
    } else {
      framing(b, view, rough, top);
    }
    Box sheathing = box(view, layers.scratch(), rough, layers.sheathing(), top);
    if (sheathing.width() > 0.05) {
      boolean holds = job.wall().sheathing().holds();
      b.outline(rect(sheathing), holds ? Shade.STONE : Shade.WHITE, Pen.EDGE);
    }
    Box scratch = box(view, layers.bed(), rough, layers.scratch(), top);
    b.outline(rect(scratch), Shade.WHITE, Pen.FINE);
    Hatch.dots(b, scratch, 1.3);
    Box bed = box(view, t, rough, layers.bed(), top);
    b.outline(rect(bed), Shade.WHITE, Pen.FINE);
    Hatch.dots(b, bed, 1.7);
    barrier(b, view, rough, top);
    stone(b, view, t, top);
  }

  // Where the job says nothing: a lintel, and framing on it.
  private void framing(Board b, Similarity view, double rough, double top) {
    Box framing = box(view, layers.sheathing(), rough, layers.framing(), top);
    double lintel = Math.min(rough + 140, top - 10);
    b.outline(rect(framing), Shade.WHITE, Pen.EDGE);
    Hatch.backing(
        b, box(view, layers.sheathing(), rough, layers.framing(), lintel), Backing.Kind.WOOD);
  }

  private List<BackingBands.Band> bands() {
    return BackingBands.of(job.wall(), soffit(), rough(), height + ABOVE);
  }

  /** Height of the soffit on the centre line above the soffit line, mm; nothing in flat heads. */
  private double soffit() {
    return !new HeadFigures(head, context.format()).curved()
        ? 0
        : head.pieces().stream()
            .filter(p -> p.stone().outline().bounds().minX() <= 1e-6)
            .filter(p -> p.stone().outline().bounds().maxX() >= -1e-6)
            .flatMap(p -> p.stone().edges(FaceEdge.Where.SOFFIT).stream())
            .mapToDouble(e -> e.at(0.5).y())
            .max()
            .orElse(0);
  }

  // The barrier lies on the sheathing; the flashing comes from behind it, over the lintel and out.
  private void barrier(Board b, Similarity view, double rough, double top) {
    double x = layers.scratch();
    Pen heavy = new Pen(0.5, Pen.Pattern.DASHED);
    b.line(view.apply(new Point(x, top)), view.apply(new Point(x, rough + 55)), Pen.HIDDEN);
    b.stroke(
        Path.through(
            view.apply(
                new Point(x + 3, others.top(Math.min(rough + 110, top - 15), top, soffit()))),
            view.apply(new Point(x + 3, others.foot(rough - 1, soffit()))),
            view.apply(new Point(layers.stone() + 2, others.foot(rough - 1, soffit()) - 3))),
        heavy);
  }

  private void stone(Board b, Similarity view, double t, double top) {
    Box face = box(view, 0, 0, t, height);
    Box wall = box(view, 0, height, t, top);
    double s = returned();
    HeadSpec.Soffit kind = opening.head().soffit();
    if (s > t && kind != HeadSpec.Soffit.NONE) {
      Box bed = box(view, t, t, s, rough());
      b.outline(rect(bed), Shade.WHITE, Pen.FINE);
      Hatch.dots(b, bed, 1.7);
      Box leg = box(view, t, 0, s, t);
      Path shape =
          Path.polygon(
              view.apply(new Point(0, 0)),
              view.apply(new Point(s, 0)),
              view.apply(new Point(s, t)),
              view.apply(new Point(t, t)),
              view.apply(new Point(t, height)),
              view.apply(new Point(0, height)));
      b.outline(shape, Shade.KEY, Pen.OUTLINE);
      Hatch.lines(b, leg, 2);
      if (kind == HeadSpec.Soffit.MITRED) {
        b.line(view.apply(Point.ORIGIN), view.apply(new Point(t, t)), Pen.CUT);
      } else if (kind == HeadSpec.Soffit.BUTTED) {
        b.line(view.apply(new Point(t, 0)), view.apply(new Point(t, t)), Pen.CUT);
      }
    } else {
      b.outline(rect(face), Shade.KEY, Pen.OUTLINE);
    }
    Hatch.lines(b, face, 2);
    b.outline(rect(wall), Shade.KEY, Pen.CUT);
    Hatch.lines(b, wall, 2);
    HeadSpec.Key key = key();
    if (key != null && (proud() > 0 || key.rise().isPositive() || key.drop().isPositive())) {
      double low = -key.drop().mm();
      double high = height + key.rise().mm();
      Box k = box(view, -proud(), low, 0, high);
      b.stroke(rect(k), Pen.HIDDEN);
    }
    screw().ifPresent(n -> n.draw(b, view));
  }

  private double returned() {
    // Beside the key, whose return is deeper by as much as it stands proud.
    return head.pieces().stream()
        .filter(p -> p.stone().role() != Role.KEY || head.pieces().size() == 1)
        .mapToDouble(p -> p.leg().depth().mm())
        .max()
        .orElse(0);
  }

  private Optional<SectionScrew> screw() {
    boolean curved = new HeadFigures(head, context.format()).curved();
    return SectionScrew.of(head, layers.stone(), height, curved);
  }

  private void sizes(Board b, Similarity view) {
    Dimensions d = new Dimensions(b);
    Point foot = view.apply(new Point(-proud(), 0));
    Point top = view.apply(new Point(-proud(), height));
    d.aligned(foot, top, 9, context.format().withUnit(opening.head().height()), SIZE);
    double s = returned();
    if (s > layers.stone()) {
      Point a = view.apply(new Point(0, 0));
      Point e = view.apply(new Point(s, 0));
      d.aligned(a, e, -9, context.format().withUnit(headcourse.units.Length.mm(s)), SIZE);
    }
  }

  private void sides(Board b, Similarity view) {
    double top = height + ABOVE;
    Point low = view.apply(new Point(-proud(), -BELOW));
    SectionSides.upright(
        b,
        context.say("contractor.outside"),
        new Point(view.apply(new Point(-proud(), 0)).x() - 4, view.apply(new Point(0, top)).y()),
        low.y(),
        -1);
    SectionSides.upright(
        b,
        context.say("contractor.inside"),
        new Point(
            view.apply(new Point(layers.framing(), 0)).x() + 5, view.apply(new Point(0, top)).y()),
        low.y(),
        1);
  }

  private Callouts names(Similarity view, double column) {
    Callouts c = new Callouts(column);
    double top = height + ABOVE;
    var f = context.format();
    double step = Math.max(16, (top - rough() - 30) / 9);
    double y = top - 8;
    name(c, view, layers.stone() / 2, y, context.say("contractor.layer-above"));
    y -= step;
    if (BackingBands.said(job.wall())) {
      for (BackingBands.Band band : bands()) {
        String text = context.say(w -> Holds.layer(w, band.what()));
        name(c, view, layers.framing() - 6, band.middle(), text);
      }
    } else {
      name(
          c,
          view,
          layers.framing() - 6,
          y,
          context.say("contractor.layer-framing", f.withUnit(job.wall().framing())));
    }
    y -= step;
    if (job.wall().sheathing().thickness().isPositive()) {
      name(
          c,
          view,
          (layers.scratch() + layers.sheathing()) / 2,
          y,
          context.say(
              "contractor.layer-sheathing", f.withUnit(job.wall().sheathing().thickness())));
    }
    y -= step;
    name(c, view, layers.scratch(), Math.max(y, rough() + 60), others.barrier());
    name(
        c,
        view,
        (layers.bed() + layers.scratch()) / 2,
        Math.max(y, rough() + 60) - step,
        context.say("contractor.layer-scratch", f.withUnit(job.wall().scratch())));
    y = Math.max(y, rough() + 60) - 2 * step;
    name(
        c,
        view,
        (layers.stone() + layers.bed()) / 2,
        Math.max(y, rough() + 20),
        context.say("contractor.layer-bed", f.withUnit(job.wall().bed())));
    screw()
        .ifPresentOrElse(
            n ->
                name(
                    c,
                    view,
                    n.tip() - 2,
                    n.height(),
                    context.say(
                        w ->
                            w.say(
                                "contractor.layer-screw",
                                Holds.screw(context, w, n.slot().anchor()),
                                headcourse.units.LengthFormat.degrees(n.slot().slant()),
                                Holds.hold(context, w, n.slot().anchor())))),
            () ->
                name(
                    c,
                    view,
                    layers.stone(),
                    height / 2,
                    context.say("contractor.layer-screw-none")));
    name(c, view, layers.framing() - 4, rough() + 12, others.lintel());
    name(c, view, layers.scratch() + 3, others.foot(rough() - 1, soffit()), others.flashing());
    double s = returned();
    if (s > layers.stone()) {
      name(
          c,
          view,
          s - 4,
          layers.stone() / 2,
          context.say(
              "contractor.layer-return",
              f.withUnit(headcourse.units.Length.mm(s)),
              f.withUnit(job.wall().bed())));
    }
    name(
        c,
        view,
        layers.stone() / 2,
        s > layers.stone() ? layers.stone() / 2 - 6 : 8,
        StoneLayer.words(context));
    return c;
  }

  private static void name(Callouts c, Similarity view, double x, double y, String text) {
    c.add(view.apply(new Point(x, y)), text);
  }
}
