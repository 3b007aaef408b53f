package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.LabelSize;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
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
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A head to scale with chained widths, height, bearing, opening and overall, for a desk. */
public final class DimensionedFigure {
  private static final Lettering DIMENSION = new Lettering(3.5, true);
  private static final double SIDE = 16;
  private static final double LEAST_TOP = 7;
  private static final double JAMB = 10;

  private final HeadFigures figures;
  private final HeadPart part;
  private final Scale scale;
  private final Words words;
  private final Similarity flat;
  private final ElevationDrawer.Detail detail;
  private final List<StoneLabels.Setting> settings;
  private final List<Point> outside = new ArrayList<>();
  private final boolean marked;
  private final Box outer;
  private final WidthChain widths;
  private final OpeningChain chain;

  private DimensionedFigure(
      HeadFigures figures, Scale scale, Words words, double room, boolean sized) {
    this.figures = figures;
    this.part = new HeadPart(1, 1, figures.layout().stones());
    this.scale = scale;
    this.words = words;
    double x0 = room / 2 - figures.box().centre().x() * scale.factor();
    this.flat = Similarity.toPaper(scale.factor(), new Point(x0, 0));
    this.detail = detail();
    // Kept: what just fits its stone here might not at the figure's place, by rounding.
    this.settings = new ElevationDrawer(figures).settings(flat, part.stones(), detail);
    this.marked = learn();
    this.outer = Box.around(outside);
    this.widths = new WidthChain(figures, flat, room, sized);
    this.chain = new OpeningChain(figures, part, words, room);
  }

  /**
   * A head at a scale in so much width of paper; none where it is too wide.
   *
   * @param sized whether the widths of its stones are to be shown
   */
  public static Optional<DimensionedFigure> of(
      HeadFigures figures, Scale scale, Words words, double room, boolean sized) {
    if (figures.box().width() * scale.factor() + 2 * SIDE > room) {
      return Optional.empty();
    }
    var figure = new DimensionedFigure(figures, scale, words, room, sized);
    return figure.outer.minX() < 0 || figure.outer.maxX() + SIDE - figure.beside() > room
        ? Optional.empty()
        : Optional.of(figure);
  }

  /** The scale. */
  public Scale scale() {
    return scale;
  }

  /** Whether there are widths but no room for them. */
  public boolean widthsLeftOut() {
    return widths.leftOut();
  }

  private double shownHeight() {
    return figures.curved() ? figures.box().maxY() : headHeight();
  }

  // A stone's mark is worth more than its screws.
  private ElevationDrawer.Detail detail() {
    var all = new ElevationDrawer.Detail(false, true, 5, true);
    boolean room =
        new ElevationDrawer(figures)
            .settings(flat, part.stones(), all).stream().allMatch(s -> s.label() != null);
    return room ? all : new ElevationDrawer.Detail(false, false, 5, true);
  }

  // What the head takes on paper with the marks that stand outside their stones, and whether every
  // stone has one.
  private boolean learn() {
    figures.box().corners().forEach(p -> outside.add(flat.apply(p)));
    var drawer = new ElevationDrawer(figures);
    var marks = drawer.outside(flat, part.stones(), detail, settings);
    boolean all = true;
    for (int i = 0; i < settings.size(); i++) {
      all &= settings.get(i).label() != null || !marks.get(i).isEmpty();
      for (Mark m : marks.get(i)) {
        if (m instanceof Label l) {
          var size = LabelSize.of(l.text(), l.lettering());
          outside.addAll(size.corners(l.at(), l.align(), l.degrees()));
        }
      }
    }
    return all;
  }

  /** Whether every stone bears its mark, on it or on a leader. */
  public boolean marked() {
    return marked;
  }

  // How far marks stand out on the right.
  private double beside() {
    return outer.maxX() - flat.apply(new Point(figures.box().maxX(), 0)).x();
  }

  private String heightText() {
    return figures.format().withUnit(Length.mm(shownHeight()));
  }

  // The height may stand over its dimension where the head is low.
  private double top() {
    double over = Dimensions.overshoot(heightText(), DIMENSION, shownHeight() * scale.factor());
    double head = figures.box().maxY() * scale.factor();
    double marks = -outer.minY() - head;
    return LEAST_TOP + Math.max(marks, Math.max(0, over - (head - shownHeight() * scale.factor())));
  }

  private double low() {
    return Math.min(figures.box().minY(), 0);
  }

  /** How much height it takes, mm. */
  public double height() {
    Box b = figures.box();
    return top()
        + (b.maxY() - low()) * scale.factor()
        + 1
        + widths.height()
        + JAMB
        + chain.height(scale.factor());
  }

  /** From model space to paper, with its upper left corner at a place. */
  public Similarity view(double left, double top) {
    return flat.then(Similarity.move(left, soffit(top)));
  }

  private double soffit(double top) {
    return top + top() + figures.box().maxY() * scale.factor();
  }

  /** Draws it with its upper left corner at a place. */
  public void draw(Board board, double left, double top) {
    double y0 = soffit(top);
    Similarity view = view(left, top);
    ElevationDrawer drawer = new ElevationDrawer(figures);
    drawer.stones(board, view, part.stones(), detail, settings);
    double under = y0 - low() * scale.factor() + 1;
    double chainTop = under + widths.height() + JAMB;
    board.group(
        Role.DIMENSIONS,
        "",
        "",
        d -> {
          String sizes = words.say("wall.sizes");
          d.group(Role.DIMENSIONS, "", sizes, w -> widths.draw(w, left, y0, under, view));
          chain.draw(d, left, chainTop, view);
          height(d, view);
        });
    board.group(Role.LINES, "", "", d -> lines(d, view, top, chainTop));
  }

  private void height(Board board, Similarity view) {
    double x = figures.curved() ? figures.box().maxX() : figures.topEnd(Side.RIGHT).mm();
    x = Math.max(x, figures.box().maxX());
    x += beside() / scale.factor();
    Point a = view.apply(new Point(x, 0));
    Point b = view.apply(new Point(x, shownHeight()));
    new Dimensions(board).aligned(a, b, -8.5, heightText(), DIMENSION);
  }

  private double headHeight() {
    return figures.layout().opening().head().height().mm();
  }

  private void lines(Board board, Similarity view, double top, double chainTop) {
    double x = view.apply(Point.ORIGIN).x();
    String name = words.say("wall.centre-line");
    board.firstFree(
        List.of(new Label(new Point(x, top + 2.5), name, Lettering.NOTE, Align.MIDDLE, 0)), 0.3);
    board.lineAround(new Point(x, top + 3.5), new Point(x, chainTop - 1), Pen.CENTRE);
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Point jamb = view.apply(new Point(side.sign() * figures.jamb(side), 0));
      board.lineAround(jamb, new Point(jamb.x(), chainTop + 2), Pen.CUT);
    }
  }
}
