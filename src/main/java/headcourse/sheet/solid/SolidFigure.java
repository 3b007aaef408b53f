package headcourse.sheet.solid;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.Board;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetContext;
import headcourse.sheet.TextFlow;
import headcourse.statics.Joint;
import headcourse.statics.Standing;
import headcourse.statics.Yield;
import java.util.ArrayList;
import java.util.List;

/**
 * A head drawn small, as if it were solid: the line of thrust through its joints, where it would
 * give way first, and what that means in a sentence. Not to scale.
 */
public final class SolidFigure {
  private static final Lettering SMALL = Lettering.NOTE;
  private static final double TALLEST = 40;
  private static final double RING = 1.1;
  private static final double JAMB = 3;

  /** Widths that it may have in a margin, mm, and the air it wants. */
  private static final double[] IN_MARGIN = {120, 100, 80, 62};

  private static final double AIR = 2;
  private static final double STEP = 2;

  private final SheetContext c;
  private final HeadWork head;
  private final Standing standing;
  private final double width;
  private final List<String> below;
  private final Box box;
  private final double scale;

  private SolidFigure(SheetContext c, HeadWork head, double width, List<String> below) {
    this.c = c;
    this.head = head;
    this.standing = head.asSolid().standing();
    this.width = width;
    this.below = below;
    Box around = null;
    for (PlacedStone s : head.layout().stones()) {
      Box one = s.outline().bounds();
      around = around == null ? one : around.union(one);
    }
    this.box = around;
    this.scale = Math.min((width - 2 * RING) / box.width(), TALLEST / box.height());
  }

  /** With all that there is to say, for the contractor. */
  static SolidFigure whole(SheetContext c, HeadWork head, double width) {
    SolidWords words = new SolidWords(c, head);
    List<String> below = new ArrayList<>(words.verdict());
    below.addAll(words.walls());
    below.addAll(words.yields());
    return new SolidFigure(c, head, width, below);
  }

  /**
   * Draws it with a sentence in a margin of a page that is drawn already.
   *
   * @return whether there was room
   */
  public static boolean inMargin(SheetContext c, HeadWork head, PageDraft page) {
    if (head.asSolid() == null) {
      return true;
    }
    SolidWords words = new SolidWords(c, head);
    List<String> below = new ArrayList<>(words.verdict());
    below.addAll(words.caution());
    Box area = page.area();
    for (double width : IN_MARGIN) {
      SolidFigure figure = new SolidFigure(c, head, width, below);
      double high = figure.height();
      for (double y = area.maxY() - high; y >= area.minY(); y -= STEP) {
        for (double x : new double[] {area.minX(), area.maxX() - width}) {
          Box taken = new Box(x, y, x + width, y + high);
          if (page.board().ink().free(corners(taken), AIR)) {
            figure.draw(page.board(), x, y);
            return true;
          }
        }
      }
    }
    return false;
  }

  private static List<Point> corners(Box b) {
    return List.of(
        new Point(b.minX(), b.minY()),
        new Point(b.maxX(), b.minY()),
        new Point(b.maxX(), b.maxY()),
        new Point(b.minX(), b.maxY()));
  }

  private List<String> title() {
    return c.words().each("solid.title");
  }

  /** How high it is, mm. */
  double height() {
    double high = 0;
    for (String line : title()) {
      high += TextFlow.height(line, width, SMALL.inBold());
    }
    high += 1 + RING + box.height() * scale + JAMB + 2;
    for (String text : below) {
      high += TextFlow.height(text, width, SMALL);
    }
    return high;
  }

  /** Draws it with its upper left corner at a place. */
  void draw(Board board, double x, double y) {
    double at = y;
    for (String line : title()) {
      at = TextFlow.paragraph(board, x, at, width, line, SMALL.inBold());
    }
    double top = at + 1 + RING;
    Similarity view =
        Similarity.toPaper(
            scale, new Point(x + width / 2 - box.centre().x() * scale, top + box.maxY() * scale));
    String name = c.say("solid.title") + " " + head.layout().opening().mark();
    board.group(Role.FIGURE, "solid-" + head.layout().opening().mark(), name, b -> head(b, view));
    at = top + box.height() * scale + JAMB + 2;
    for (String text : below) {
      at = TextFlow.paragraph(board, x, at, width, text, SMALL);
    }
  }

  private void head(Board b, Similarity view) {
    for (PlacedStone s : head.layout().stones()) {
      b.outline(s.outline().transformed(view), Shade.STONE, Pen.FINE);
    }
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      double jamb = side.sign() * head.layout().jamb(side).mm();
      Point foot = view.apply(new Point(jamb, 0));
      Point low = new Point(foot.x(), view.apply(new Point(0, box.minY())).y() + JAMB);
      b.line(foot, low, Pen.DIMENSION);
    }
    List<Point> line = standing.line().stream().map(view::apply).toList();
    if (line.size() > 1) {
      b.stroke(Path.through(line.toArray(new Point[0])), Pen.CUT);
    }
    standing.yields().forEach(y -> yields(b, view, y));
  }

  private void yields(Board b, Similarity view, Yield y) {
    Joint joint = standing.joints().get(y.joint());
    Point foot = view.apply(joint.foot());
    Point back = view.apply(joint.head());
    if (y.how() == Yield.How.SLIDE) {
      Vec off = back.minus(foot).unit().normal().times(RING * 0.6);
      b.line(foot.plus(off), back.plus(off), Pen.CUT);
      b.line(foot.plus(off.times(-1)), back.plus(off.times(-1)), Pen.CUT);
    } else {
      Point at = y.how() == Yield.How.HINGE_FOOT ? foot : back;
      b.outline(Path.circle(at, RING), Shade.WHITE, Pen.EDGE);
    }
  }
}
