package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.HeadSpec;
import headcourse.layout.Side;
import headcourse.layout.VSoffit;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ticket's section through the L, broken off above, and where the return is cut away, a plan of
 * it. Every size stands at the end of its own line, where nothing else is drawn.
 */
final class TicketSection {
  private static final double PAD = 2;
  private static final double FIGURE = 20;
  private static final double PLAN = 9;
  private static final double LEAST_WIDTH = 26;

  /** What the L takes of the width beside a plan. */
  private static final double SECTION = 0.52;

  private final SheetContext c;
  private final Piece piece;
  private final TicketType type;
  private final HeadSpec.Soffit soffit;

  private final Optional<VSoffit> vee;
  private final String relief;
  private final double titleHeight;
  private final double reliefHeight;

  /** A section of a width, mm. */
  TicketSection(SheetContext c, Ticket ticket, TicketType type, double width) {
    this.c = c;
    this.piece = ticket.piece();
    this.type = type;
    this.soffit = ticket.head().layout().opening().head().soffit();
    this.vee = VSoffit.of(piece.stone());
    this.relief = relief();
    this.titleHeight = noteHeight(longestTitle(), width);
    this.reliefHeight = noteHeight(relief, width);
  }

  // A V with soffit pieces behind it: the section shows the first of them.
  private boolean flanked() {
    return !returns() && !piece.soffitPieces().isEmpty();
  }

  /** How far the V takes the foot up on the centre line, mm. */
  private double raised() {
    return vee.map(v -> v.depth().mm()).orElse(0.0);
  }

  private boolean returns() {
    return piece.leg().depth().isPositive();
  }

  private boolean relieved() {
    return returns() && piece.leg().relief().isPositive();
  }

  private String longestTitle() {
    String longest = c.job().units() == headcourse.units.Units.INCH ? "1 ¹⁄₂\" = 1'-0\"" : "1:10";
    return c.say("ticket.section", longest);
  }

  private double noteHeight(String text, double width) {
    return type.height(text, width - 2 * PAD, type.note());
  }

  // Room above and below the L for a size each.
  private double above() {
    return Outer.high(tape(piece.thickness()), type.edge()) + 0.4;
  }

  private double below() {
    if (!returns() && !flanked()) {
      return 2;
    }
    String relief = relieved() ? tape(piece.leg().relief()) : "";
    double deep = Outer.high(tape(Length.mm(deep())), type.edge());
    return Math.max(deep, Outer.high(relief, type.edge())) + 0.8;
  }

  private double fixed() {
    return 2.4 + titleHeight + above() + below() + reliefHeight + 0.5;
  }

  /** Whether section and plan with their sizes have room in a width, mm. */
  boolean fits(double width) {
    return width >= LEAST_WIDTH * type.factor();
  }

  double height() {
    return fixed() + FIGURE * type.factor();
  }

  void draw(Board board, Box box) {
    double t = piece.thickness().mm();
    double s = deep();
    // Where the return is cut away, the plan of it stands beside the L.
    double mine = relieved() ? box.width() * SECTION : box.width();
    double aside = vee.isPresent() ? 5 : 0;
    double margin = relieved() || aside > 0 ? 4 : 12;
    double roomW = mine - margin - type.note().height() * 2 - aside;
    double roomH = box.height() - fixed();
    // The leg is shown up to the return or so; what matters is at the corner.
    double shown =
        Math.min(
            piece.stone().height().mm(),
            vee.isPresent() ? raised() + 2.5 * t : Math.max(2.2 * t, 1.3 * s));
    Scale scale = Scale.largest(c.job().units(), s, shown, roomW, roomH);
    double k = scale.factor();
    double right = box.minX() + mine / 2 + (s * k + aside) / 2;
    double top = box.minY() + 2.4 + titleHeight + above();
    double bottom = top + roomH;
    top = bottom - shown * k;
    boolean broken = shown < piece.stone().height().mm();
    double rise = raised() * k;
    double leg = returns() ? s * k : t * k;
    Path outline = outline(right, bottom - rise, top, t * k, leg, broken, t * k - rise);
    Point foot = new Point(right, bottom);
    double up = top;
    board.group(
        Role.FIGURE,
        "",
        c.say("ticket.section-alt", c.format().withUnit(piece.thickness())),
        g -> {
          g.outline(outline, Shade.KEY, Pen.CUT);
          seam(g, foot, t * k);
          vee.ifPresent(v -> vee(g, foot, v, t * k, s * k, k));
          Outer o = new Outer(g, sizes(box.width()));
          o.over(foot.x() - t * k, foot.x(), up, c.format().tape(piece.thickness()));
          if (returns() || flanked()) {
            o.under(foot.x() - s * k, foot.x(), foot.y(), tape(Length.mm(s)));
          }
          String word = c.words().each("ticket.face-word").get(0);
          double down = type.note().height() + 1;
          g.firstFree(
              List.of(
                  new Mark.Label(
                      new Point(foot.x() + down + 0.4, foot.y() - 1),
                      word,
                      type.note(),
                      Align.START,
                      90)),
              0.2);
        });
    if (relieved()) {
      plan(
          board,
          new Box(box.minX() + mine, box.minY(), box.maxX(), box.maxY()),
          bottom,
          box.width());
    }
    board.group(
        Role.NOTES,
        "",
        "",
        g -> {
          double x = box.minX() + PAD;
          double w = box.width() - 2 * PAD;
          String title = c.say("ticket.section", scale.name());
          type.paragraph(g, x, box.minY() + 2.4, w, title, type.note());
          double y = box.maxY() - reliefHeight;
          type.paragraph(g, x, y, w, relief, type.note());
        });
  }

  // Smaller where return and relief would not stand side by side, each under its own.
  private Lettering sizes(double width) {
    if (!relieved()) {
      return type.edge();
    }
    for (double h : new double[] {5, 3.5}) {
      Lettering l = new Lettering(h, true);
      double most =
          Math.max(
              LabelShape.width(tape(piece.leg().depth()), l) / SECTION,
              LabelShape.width(tape(piece.leg().relief()), l) / (1 - SECTION));
      if (h <= type.edge().height() && most + 3 <= width) {
        return l;
      }
    }
    return new Lettering(Lettering.LEAST, true);
  }

  // From the outside face to the back of what covers the soffit.
  private double deep() {
    double t = piece.thickness().mm();
    return flanked()
        ? t + piece.soffitPieces().get(0).depth().mm()
        : returns() ? piece.leg().depth().mm() : t;
  }

  private String tape(Length length) {
    return c.format().tape(length);
  }

  // On the centre line: the corners' level, how far the apex stands above it, the piece behind.
  private void vee(Board g, Point foot, VSoffit v, double t, double s, double k) {
    double apex = foot.y() - v.depth().mm() * k;
    // A flat on a slope is as much higher where it is cut plumb.
    double high = flanked() ? t / Math.cos(v.apex().minus(v.left()).angle()) : 0;
    if (flanked()) {
      g.outline(Path.rect(foot.x() - s, apex - high, s - t, high), Shade.KEY, Pen.CUT);
    }
    g.line(foot.x() - s, foot.y(), foot.x(), foot.y(), Pen.HIDDEN);
    Outer o = new Outer(g, type.edge());
    double over = returns() ? foot.y() - t : apex - high;
    o.left(foot.x() - s, apex, foot.y(), tape(v.depth()), foot.x() - t, over);
  }

  // Where the soffit of a stone made of two flats meets its face.
  private void seam(Board g, Point foot, double t) {
    Point inner = new Point(foot.x() - t, foot.y() - t);
    if (returns() && soffit == HeadSpec.Soffit.MITRED) {
      g.line(foot, inner, Pen.CUT);
    } else if (returns() && soffit == HeadSpec.Soffit.BUTTED) {
      g.line(new Point(inner.x(), foot.y()), inner, Pen.CUT);
    }
  }

  // The return from above, the wall's side up, left and right as on the face.
  private void plan(Board board, Box box, double foot, double whole) {
    double high = PLAN * type.factor();
    double wide = box.width() - 5;
    double bottom = piece.stone().bottom().mm();
    double k = Math.min(wide / bottom, high / piece.leg().depth().mm());
    double t = piece.thickness().mm() * k;
    double s = piece.leg().depth().mm() * k;
    double x0 = box.centre().x() - bottom * k / 2;
    double x1 = box.centre().x() + bottom * k / 2;
    double cut = Math.min(piece.leg().relief().mm() * k, bottom * k);
    boolean left = piece.stone().side() == Side.LEFT;
    double a = left ? x0 : x1 - cut;
    double b = left ? x0 + cut : x1;
    board.group(
        Role.FIGURE,
        "",
        relief,
        g -> {
          double y0 = foot - s;
          double y1 = foot;
          g.outline(Path.rect(x0, y1 - t, x1 - x0, t), Shade.KEY, Pen.CUT);
          double from = left ? b : x0;
          double to = left ? x1 : a;
          if (to - from > 0.05) {
            g.outline(Path.rect(from, y0, to - from, s - t), Shade.STONE, Pen.CUT);
          }
          g.stroke(Path.rect(a, y0, b - a, s - t), Pen.HIDDEN);
          String size = c.format().tape(piece.leg().relief());
          Lettering l = sizes(whole);
          double half = LabelShape.width(size, l) / 2 + 1;
          double at = Math.min(box.maxX() - half, Math.max(box.minX() + half, (a + b) / 2));
          new Outer(g, l).under(a, b, y1, size, at);
        });
  }

  private String relief() {
    if (vee.isPresent() && !returns()) {
      return c.say(flanked() ? "ticket.section-v" : "ticket.no-return");
    }
    if (!returns()) {
      return c.say("ticket.no-return");
    }
    return relieved()
        ? c.say("ticket.relief", c.format().withUnit(piece.leg().relief()))
        : c.say("ticket.no-relief");
  }

  // Seen from the left end: face to the right, back to the left, the return running back below.
  private static Path outline(
      double right, double bottom, double top, double t, double s, boolean broken, double leg) {
    List<Point> p = new ArrayList<>();
    p.add(new Point(right - s, bottom));
    p.add(new Point(right, bottom));
    p.add(new Point(right, top));
    if (broken) {
      p.add(new Point(right - t * 0.4, top));
      p.add(new Point(right - t * 0.47, top - t * 0.1));
      p.add(new Point(right - t * 0.57, top + t * 0.1));
      p.add(new Point(right - t * 0.64, top));
    }
    p.add(new Point(right - t, top));
    if (s > t) {
      p.add(new Point(right - t, bottom - leg));
      p.add(new Point(right - s, bottom - leg));
    }
    return Path.polygon(p);
  }

  /** Sizes whose text stands beyond their line, clear of the object however narrow they are. */
  record Outer(Board g, Lettering lettering) {
    private static final double AWAY = 3.2;

    /** How far a size above or below an object reaches away from it, mm. */
    static double high(String text, Lettering lettering) {
      return AWAY + 1.8 + LabelShape.above(text, lettering) + LabelShape.below(text, lettering);
    }

    /** Above an object. */
    void over(double x0, double x1, double y, String text) {
      lines(x0, x1, y, y - AWAY, -1);
      double base = y - AWAY - 1.8 - LabelShape.below(text, lettering);
      g.text((x0 + x1) / 2, base, text, lettering, Align.MIDDLE);
    }

    /** Below an object. */
    void under(double x0, double x1, double y, String text) {
      under(x0, x1, y, text, (x0 + x1) / 2);
    }

    /** Below an object, the middle of the text at a place. */
    void under(double x0, double x1, double y, String text, double at) {
      lines(x0, x1, y, y + AWAY, 1);
      double base = y + AWAY + 1.8 + LabelShape.above(text, lettering);
      g.text(at, base, text, lettering, Align.MIDDLE);
    }

    /** To the left of an object. */
    void left(double x, double y0, double y1, String text) {
      beside(x, y0, y1, text, -1);
    }

    /** The same, its text over the object, where it has to end before a place. */
    void left(double x, double y0, double y1, String text, double end, double over) {
      line(x - AWAY, x - 1, y0, y1);
      double y = Math.min(y0 - 1, over) - 1 - LabelShape.below(text, lettering);
      g.text(end - 1.2, y, text, lettering, Align.END);
    }

    /** To the right of an object. */
    void right(double x, double y0, double y1, String text) {
      beside(x, y0, y1, text, 1);
    }

    private void beside(double x, double y0, double y1, String text, int way) {
      double at = x + way * AWAY;
      line(at, x + way, y0, y1);
      double half = (LabelShape.above(text, lettering) - LabelShape.below(text, lettering)) / 2;
      Align align = way < 0 ? Align.END : Align.START;
      g.text(at + way * 1.8, (y0 + y1) / 2 + half, text, lettering, align);
    }

    private void line(double at, double from, double y0, double y1) {
      for (double y : new double[] {y0, y1}) {
        g.line(from, y, at + Math.signum(at - from), y, Pen.FINE);
        g.line(at - 0.9, y + 0.9, at + 0.9, y - 0.9, Pen.CUT);
      }
      g.line(at, y0, at, y1, Pen.DIMENSION);
    }

    private void lines(double x0, double x1, double y, double at, int sign) {
      for (double x : new double[] {x0, x1}) {
        g.line(x, y + sign, x, at + sign, Pen.FINE);
        g.line(x - 0.9, at + 0.9, x + 0.9, at - 0.9, Pen.CUT);
      }
      g.line(x0, at, x1, at, Pen.DIMENSION);
    }
  }
}
