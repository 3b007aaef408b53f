package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Label;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.Side;
import headcourse.sheet.Scale;
import headcourse.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A head, or a part of one, to scale with its running marks, jambs, bearing and overall width: from
 * the top down top marks, stones, soffit marks, the chain over the opening, the overall width. The
 * soffit marks of an arch stand around it, inside the opening.
 */
public final class ElevationFigure {
  /** A stone narrower than this on paper has no room for its mark, mm. */
  static final double NARROWEST = 4.7;

  private static final double SIDE = ElevationBands.SIDE;
  private static final Lettering SMALL = new Lettering(3.5, true);

  private final HeadFigures figures;
  private final HeadPart part;
  private final Scale scale;
  private final Words words;
  private final double room;
  private final Similarity flat;
  private final MarkBand below;
  private final MarkBand above;
  private final MarkBand.Plan belowPlan;
  private final ArcMarks.Plan arcPlan;
  private final MarkBand.Plan abovePlan;
  private final OpeningChain chain;
  private final double largest;
  private List<StoneLabels.Setting> settings;

  private ElevationFigure(
      ElevationBands bands,
      MarkBand.Plan belowPlan,
      ArcMarks.Plan arcPlan,
      MarkBand.Plan abovePlan,
      double cap) {
    this.figures = bands.figures();
    this.part = bands.part();
    this.scale = bands.scale();
    this.words = bands.words();
    this.room = bands.room();
    this.flat = bands.flat();
    this.below = bands.below();
    this.above = bands.above();
    this.belowPlan = belowPlan;
    this.arcPlan = arcPlan;
    this.abovePlan = abovePlan;
    this.chain = bands.chain();
    this.largest = Math.max(cap, 7);
  }

  /**
   * A part of a head at a scale.
   *
   * @param cap height of the running marks, mm; smaller ones are tried where it does not fit
   * @return none where not even the least lettering fits
   */
  static Optional<ElevationFigure> of(ElevationBands bands, double cap) {
    ArcMarks.Plan arc = bands.arc() == null ? null : bands.arc().best(cap).orElse(null);
    if (arc == null && bands.arc() != null) {
      return Optional.empty();
    }
    MarkBand.Plan below = best(bands.below(), cap);
    double most = arc != null ? arc.cap() : below == null ? 0 : below.cap();
    MarkBand.Plan above = below == null ? null : best(bands.above(), most);
    return above == null
        ? Optional.empty()
        : Optional.of(new ElevationFigure(bands, below, arc, above, cap));
  }

  private static MarkBand.Plan best(MarkBand band, double most) {
    for (double cap : StoneLabels.HEIGHTS) {
      if (cap <= most + 1e-9) {
        for (int rows = 1; rows <= 2; rows++) {
          Optional<MarkBand.Plan> plan = band.plan(cap, rows);
          if (plan.isPresent()) {
            return plan.get();
          }
        }
      }
    }
    return null;
  }

  /** Height of capitals of the running marks, mm. */
  public double lettering() {
    return arcPlan == null ? belowPlan.cap() : arcPlan.cap();
  }

  /** The scale. */
  public Scale scale() {
    return scale;
  }

  /** The part shboard. */
  public HeadPart part() {
    return part;
  }

  /** Width of the paper that it was laid out for, mm. */
  public double room() {
    return room;
  }

  /** Whether every stone has room on paper for its mark and its setting number. */
  boolean readable() {
    return (figures.curved()
            || part.stones().stream()
                .allMatch(s -> s.outline().bounds().width() * scale.factor() >= NARROWEST))
        && settings().stream().allMatch(StoneLabels.Setting::both);
  }

  private List<StoneLabels.Setting> settings() {
    if (settings == null) {
      settings = new ElevationDrawer(figures).settings(flat, part.stones(), detail());
    }
    return settings;
  }

  private ElevationDrawer.Detail detail() {
    return new ElevationDrawer.Detail(true, true, Math.max(7, largest), false);
  }

  private double topDepth() {
    boolean centre = part.holds(0);
    double marks = above.any() ? abovePlan.depth() + 2 : 0;
    return marks + (centre ? SMALL.height() + 4 : 2);
  }

  // From the springing line, or soffit line, down to where the bands below begin, on paper.
  private double low() {
    boolean standing =
        !figures.curved()
            || part.holdsJamb(figures, Side.LEFT)
            || part.holdsJamb(figures, Side.RIGHT);
    double model = standing ? Math.min(part.box().minY(), 0) : part.box().minY();
    double bare = -model * scale.factor() + 2.5;
    return arcPlan == null ? bare + belowPlan.depth() : Math.max(bare, arcPlan.box().maxY() + 1);
  }

  /** How much height it takes, mm. */
  public double height() {
    return topDepth()
        + part.box().maxY() * scale.factor()
        + low()
        + 2
        + chain.height(scale.factor());
  }

  /**
   * Draws it.
   *
   * @param left left end of the room
   * @param top upper end
   * @return lower end
   */
  public double draw(Board board, double left, double top) {
    Box b = part.box();
    double y0 = top + topDepth() + b.maxY() * scale.factor();
    Similarity shift = Similarity.move(left, y0);
    Similarity view = flat.then(shift);
    double underside = y0 - Math.min(b.minY(), 0) * scale.factor() + 2.5;
    double upperside = top + topDepth() - 2;
    new ElevationDrawer(figures).stones(board, view, part.stones(), detail(), settings());
    board.group(
        Role.DIMENSIONS,
        "",
        "",
        d -> {
          for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            double beside = (room - b.width() * scale.factor()) / 2;
            EndHeights.beside(figures, beside).draw(d, view, side, part);
          }
          if (arcPlan == null) {
            below.moved(shift).draw(d, moved(belowPlan, left), underside, 1);
          } else {
            ArcMarks.draw(d, arcPlan, shift);
          }
          if (abovePlan.depth() > 0 && above.any()) {
            above.moved(shift).draw(d, moved(abovePlan, left), upperside, -1);
          }
        });
    double chainTop = y0 + low() + 2;
    double bottom = chainTop + chain.height(scale.factor());
    board.group(Role.DIMENSIONS, "", "", d -> chain.draw(d, left, chainTop, view));
    board.group(Role.LINES, "", "", d -> lines(d, view, left, top, chainTop));
    return bottom;
  }

  private void lines(Board board, Similarity view, double left, double top, double chainTop) {
    if (part.holds(0)) {
      double x = view.apply(Point.ORIGIN).x();
      String name = words.say("wall.centre-line");
      double base = top + SMALL.height();
      board.firstFree(centreNames(x, base, name, left), 0.5);
      board.lineAround(
          new Point(x, top + SMALL.height() + 1.5), new Point(x, chainTop - 1), Pen.CENTRE);
    }
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      double jamb = side.sign() * figures.jamb(side);
      if (part.holdsJamb(figures, side)) {
        Point foot = view.apply(new Point(jamb, 0));
        Point head = view.apply(new Point(jamb, topAt(jamb)));
        board.lineAround(foot, new Point(foot.x(), chainTop + 2), Pen.OUTLINE);
        if (!figures.curved()) {
          board.lineAround(head, foot, Pen.HIDDEN);
        }
        jambName(board, foot, chainTop, side, left);
        wallLine(board, view, side);
      }
    }
  }

  private List<Label> centreNames(double x, double base, String name, double left) {
    List<Label> labels = new ArrayList<>();
    for (Lettering l : List.of(SMALL, new Lettering(2.5, true))) {
      double half = LabelShape.width(name, l) / 2;
      double at = Math.max(left + half, Math.min(left + room - half, x));
      labels.add(new Label(new Point(at, base), name, l, Align.MIDDLE, 0));
    }
    return labels;
  }

  // Height of the head's outline over a place, for the hidden jamb line behind the end stone.
  private double topAt(double x) {
    return part.stones().stream()
        .map(s -> s.outline().bounds())
        .filter(b -> b.minX() <= x && x <= b.maxX())
        .mapToDouble(Box::maxY)
        .max()
        .orElse(0);
  }

  private void jambName(Board board, Point foot, double chainTop, Side side, double left) {
    String name = words.say("wall.jamb");
    List<Label> places = new ArrayList<>();
    for (double y : new double[] {chainTop - 1, chainTop - 6, (foot.y() + chainTop) / 2}) {
      for (int way : new int[] {-side.sign(), side.sign()}) {
        Align align = way > 0 ? Align.START : Align.END;
        places.add(
            new Label(
                new Point(foot.x() + way * 1.5, y), name, new Lettering(2.5, false), align, 0));
      }
    }
    places.removeIf(
        l -> LabelShape.bounds(l).minX() < left || LabelShape.bounds(l).maxX() > left + room);
    board.firstFree(places, 0.5);
  }

  // The bed that the end stone sits on, run out a little past the end.
  private void wallLine(Board board, Similarity view, Side side) {
    double end = side.sign() * figures.end(side).mm();
    if (figures.curved() || Math.abs(end) < figures.jamb(side) + 0.01) {
      return;
    }
    Point from = view.apply(new Point(end, 0));
    double reach = Math.min(SIDE - 0.5, 8);
    board.lineAround(from, new Point(from.x() + side.sign() * reach, from.y()), Pen.EDGE);
  }

  private static MarkBand.Plan moved(MarkBand.Plan plan, double left) {
    double[] slots = plan.slots().clone();
    for (int i = 0; i < slots.length; i++) {
      slots[i] += left;
    }
    return new MarkBand.Plan(plan.cap(), plan.rows(), slots, plan.jog(), plan.near(), plan.depth());
  }
}
