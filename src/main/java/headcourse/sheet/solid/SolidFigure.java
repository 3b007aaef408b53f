package headcourse.sheet.solid;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetContext;
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
  private static final double RING = 1.1;
  private static final double JAMB = 3;

  /** How it may be laid out in a margin, the largest drawing first. */
  private static final List<Lay> IN_MARGIN =
      List.of(
          new Lay(120, 120, 40),
          new Lay(190, 90, 32),
          new Lay(100, 100, 24),
          new Lay(150, 70, 22),
          new Lay(80, 80, 24),
          new Lay(120, 50, 16),
          new Lay(62, 62, 20),
          new Lay(240, 60, 14),
          new Lay(100, 36, 16),
          new Lay(190, 44, 14),
          new Lay(70, 70, 9),
          new Lay(150, 40, 12),
          new Lay(56, 56, 12));

  /** How it is laid out for the contractor. */
  private static final double TALLEST = 40;

  private static final double GUTTER = 4;

  private static final double AIR = 2;
  private static final double STEP = 0.5;

  /** A strip across a page: no wider than this, its drawing so much of it and so tall, mm. */
  private static final double STRIP = 240;

  private static final double STRIP_DRAWING = 0.25;
  private static final double STRIP_TALLEST = 22;

  private final SheetContext c;
  private final HeadWork head;
  private final Standing standing;
  private final Lay lay;
  private final List<String> title;
  private final List<String> text;
  private final Box box;
  private final double scale;

  /**
   * A layout.
   *
   * @param width of all of it, mm
   * @param drawing width of the drawing; the text stands beside it where that leaves room, else
   *     below
   * @param tallest height of the drawing at most, mm
   */
  private record Lay(double width, double drawing, double tallest) {
    boolean beside() {
      return drawing < width;
    }

    double text() {
      return beside() ? width - drawing - GUTTER : width;
    }
  }

  private SolidFigure(
      SheetContext c, HeadWork head, Lay lay, List<String> title, List<String> text) {
    this.c = c;
    this.head = head;
    this.standing = head.asSolid().standing();
    this.lay = lay;
    this.title = title;
    this.text = text;
    Box around = null;
    for (PlacedStone s : head.layout().stones()) {
      Box one = s.outline().bounds();
      around = around == null ? one : around.union(one);
    }
    this.box = around;
    this.scale = Math.min((lay.drawing - 2 * RING) / box.width(), lay.tallest / box.height());
  }

  /** With all that there is to say, for the contractor. */
  static SolidFigure whole(SheetContext c, HeadWork head, double width) {
    SolidWords words = new SolidWords(c, head);
    List<String> text = new ArrayList<>(words.verdict());
    // Beside each, because the next may stand on another page.
    text.addAll(words.caution());
    text.addAll(words.thrusts());
    text.addAll(new SolidCures(c, head).all());
    text.addAll(words.textbook());
    text.addAll(words.walls());
    text.addAll(words.yields());
    return new SolidFigure(c, head, new Lay(width, width, TALLEST), List.of(), text);
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
    Box area = page.area();
    for (Lay lay : IN_MARGIN) {
      if (lay.width > area.width() - AIR) {
        continue;
      }
      SolidFigure figure = brief(c, head, lay);
      double high = figure.height();
      // A line of the frame may stand right beside the area.
      double last = area.maxX() - lay.width - AIR;
      for (double y = area.maxY() - high; y >= area.minY(); y -= STEP) {
        for (double x : new double[] {area.minX(), last, (area.minX() + last) / 2}) {
          Box taken = new Box(x, y, x + lay.width, y + high);
          if (page.board().ink().free(corners(taken), AIR)) {
            figure.draw(page.board(), x, y);
            return true;
          }
        }
      }
    }
    return false;
  }

  /** With a sentence, across a page that has no room for it elsewhere. */
  public static SolidFigure strip(SheetContext c, HeadWork head, double width) {
    double wide = Math.min(width, STRIP);
    return brief(c, head, new Lay(wide, wide * STRIP_DRAWING, STRIP_TALLEST));
  }

  /** With a sentence, on a sheet of its own. */
  public static SolidFigure alone(SheetContext c, HeadWork head, double width) {
    return brief(c, head, new Lay(width, width, TALLEST));
  }

  private static SolidFigure brief(SheetContext c, HeadWork head, Lay lay) {
    SolidWords words = new SolidWords(c, head);
    List<String> text = new ArrayList<>(words.verdict());
    text.addAll(words.caution());
    return new SolidFigure(c, head, lay, c.words().each("solid.title"), text);
  }

  private static List<Point> corners(Box b) {
    return List.of(
        new Point(b.minX(), b.minY()),
        new Point(b.maxX(), b.minY()),
        new Point(b.maxX(), b.maxY()),
        new Point(b.minX(), b.maxY()));
  }

  private double drawn() {
    return 1 + 2 * RING + box.height() * scale + JAMB;
  }

  /** How high it is, mm. */
  public double height() {
    double words = high(title, SMALL.inBold()) + high(text, SMALL);
    return lay.beside() ? Math.max(words, drawn()) : words + drawn();
  }

  private double high(List<String> lines, Lettering lettering) {
    return lines.stream().mapToDouble(t -> TextFlow.height(t, lay.text(), lettering)).sum();
  }

  /** Draws it with its upper left corner at a place. */
  public void draw(Board board, double x, double y) {
    double left = lay.beside() ? x + lay.drawing + GUTTER : x;
    double at = y;
    for (String line : title) {
      at = TextFlow.paragraph(board, left, at, lay.text(), line, SMALL.inBold());
    }
    double top = 1 + RING + (lay.beside() ? y : at);
    Similarity view =
        Similarity.toPaper(
            scale,
            new Point(x + lay.drawing / 2 - box.centre().x() * scale, top + box.maxY() * scale));
    String name = c.say("solid.title") + " " + head.layout().opening().mark();
    board.group(Role.FIGURE, "solid-" + head.layout().opening().mark(), name, b -> head(b, view));
    at = lay.beside() ? at : top - 1 - RING + drawn();
    for (String line : text) {
      at = TextFlow.paragraph(board, left, at, lay.text(), line, SMALL);
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
