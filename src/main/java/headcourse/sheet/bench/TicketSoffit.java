package headcourse.sheet.bench;

import headcourse.bench.Anchor;
import headcourse.bench.Piece;
import headcourse.bench.Rake.LongPoint;
import headcourse.bench.SoffitNotch;
import headcourse.bench.SoffitPiece;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.layout.Side;
import headcourse.rules.AnchorWords;
import headcourse.sheet.Amounts;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/**
 * The ticket's soffit piece: the flat behind the face as it lies over the opening, seen from above,
 * left as left from outside, its outer edge below; and what is to be said of it. Of the two behind
 * a V the left one is drawn.
 */
final class TicketSoffit {
  private static final double PAD = 2;
  private static final double FIGURE = 15;

  /** What the figure takes of the width. */
  private static final double SHARE = 0.42;

  private final SheetContext c;
  private final Ticket ticket;
  private final Piece piece;
  private final TicketType type;

  TicketSoffit(SheetContext c, Ticket ticket, TicketType type) {
    this.c = c;
    this.ticket = ticket;
    this.piece = ticket.piece();
    this.type = type;
  }

  private boolean none() {
    return piece.soffitPieces().isEmpty();
  }

  private SoffitPiece first() {
    return piece.soffitPieces().get(0);
  }

  private double over() {
    return type.edge().height() * 1.4 + 5.6;
  }

  // The longest name of a scale stands for the one that is chosen later.
  private double title(double width) {
    String longest = c.job().units() == headcourse.units.Units.INCH ? "1 ¹⁄₂\" = 1'-0\"" : "1:10";
    String title = c.say("ticket.soffit", first().mark(), longest);
    return type.height(title, width * SHARE - 2 * PAD, type.note());
  }

  private double fixed(double width) {
    return 2.4 + title(width) + 2 * over() + 1;
  }

  /** The least height at a width, mm; nothing without a soffit piece. */
  double height(double width) {
    if (none()) {
      return 0;
    }
    double words = words(new Board(), 0, 0, width * (1 - SHARE));
    return Math.max(words + 1, fixed(width) + FIGURE * type.factor());
  }

  /** Draws it on a page of its own, in a frame. */
  void drawApart(Board board, Box box) {
    Path frame = Path.rect(box.minX(), box.minY(), box.width(), box.height());
    board.group(Role.TABLE, "", "", b -> b.stroke(frame, Pen.CUT));
    draw(board, box);
  }

  void draw(Board board, Box box) {
    if (none()) {
      return;
    }
    double split = box.minX() + box.width() * SHARE;
    board.group(
        Role.TABLE, "", "", b -> b.line(box.minX(), box.minY(), box.maxX(), box.minY(), Pen.EDGE));
    figure(board, new Box(box.minX(), box.minY(), split, box.maxY()));
    board.group(Role.NOTES, "", "", b -> words(b, split, box.minY(), box.maxX() - split));
  }

  private void figure(Board board, Box box) {
    SoffitPiece s = first();
    double lead = LabelShape.width(c.format().tape(s.depth()), type.edge()) + 7;
    double relief = s.relief().mm();
    double wide = Math.max(s.length().mm(), s.upper().mm()) + relief;
    double roomW = box.width() - 2 * PAD - lead - 2;
    double roomH = box.height() - fixed(box.width() / SHARE);
    Scale scale = Scale.largest(c.job().units(), wide, s.depth().mm(), roomW, roomH);
    double k = scale.factor();
    boolean left = piece.stone().side() == Side.LEFT;
    double x0 = box.minX() + PAD + lead + (roomW - wide * k) / 2 + (left ? relief * k : 0);
    double y1 =
        box.minY() + 2.4 + title(box.width() / SHARE) + over() + (roomH + s.depth().mm() * k) / 2;
    double y0 = y1 - s.depth().mm() * k;
    // Whichever side is the longer at the left end begins at the very left.
    double lean = Math.tan(s.left().offSquare().radians()) * s.thickness().mm() * k;
    double low = s.left().longPoint() == LongPoint.TOP ? x0 + lean : x0;
    double high = s.left().longPoint() == LongPoint.BOTTOM ? x0 + lean : x0;
    double under = s.underside().mm() * k;
    double upper = s.upper().mm() * k;
    boolean mitred = s.joint() == SoffitPiece.Joint.MITRED;
    double front = mitred ? y1 - s.thickness().mm() * k : y1;
    String title = c.say("ticket.soffit", s.mark(), scale.name());
    board.group(
        Role.NOTES,
        "",
        "",
        g ->
            type.paragraph(
                g, box.minX() + PAD, box.minY() + 2.4, box.width() - 2 * PAD, title, type.note()));
    board.group(
        Role.FIGURE,
        "",
        c.say(
            "ticket.soffit-alt",
            s.mark(),
            c.format().withUnit(s.underside()),
            c.format().withUnit(s.depth())),
        g -> {
          g.outline(Path.rect(high, y0, upper, front - y0), Shade.KEY, Pen.CUT);
          if (mitred) {
            g.outline(Path.rect(low, front, under, y1 - front), Shade.STONE, Pen.CUT);
          }
          if (Math.abs(upper - under) > 0.05) {
            g.line(low, y0, low, y1, Pen.HIDDEN);
            g.line(low + under, y0, low + under, y1, Pen.HIDDEN);
          }
          if (relief > 0) {
            double from = left ? low - relief * k : low + under;
            g.stroke(Path.rect(from, y0, relief * k, y1 - y0), Pen.HIDDEN);
          }
          for (SoffitNotch n : s.notches()) {
            slot(g, n, Math.min(low, high), Math.max(low + under, high + upper), y0, k);
          }
          var o = new TicketSection.Outer(g, type.edge());
          o.under(low, low + under, y1, tape(s.underside()));
          if (!s.upper().equals(s.underside())) {
            o.over(high, high + upper, y0, tape(s.upper()));
          }
          o.left(Math.min(low, high) - (left ? relief * k : 0), y0, y1, tape(s.depth()));
        });
  }

  // A tick across the edge where the screw goes up.
  private static void slot(Board g, SoffitNotch n, double x0, double x1, double back, double k) {
    double place = n.place().mm() * k;
    if (n.edge() == SoffitNotch.Edge.BACK) {
      double x = x0 + place;
      g.stroke(
          Path.through(new Point(x - 1.2, back), new Point(x, back + 3), new Point(x + 1.2, back)),
          Pen.EDGE);
      return;
    }
    boolean left = n.edge() == SoffitNotch.Edge.LEFT;
    double x = left ? x0 : x1;
    double y = back + place;
    g.stroke(
        Path.through(
            new Point(x, y - 1.2), new Point(x + (left ? 3 : -3), y), new Point(x, y + 1.2)),
        Pen.EDGE);
  }

  private String tape(Length length) {
    return c.format().tape(length);
  }

  private double words(Board b, double left, double top, double width) {
    double x = left + PAD;
    double w = width - 2 * PAD;
    double y = top + 2;
    for (String text : told()) {
      y = type.paragraph(b, x, y, w, text, y > top + 2 ? type.note() : type.body().inBold());
    }
    return y;
  }

  private List<String> told() {
    SoffitPiece s = first();
    LengthFormat f = c.format();
    List<String> told = new ArrayList<>();
    Amounts amounts = new Amounts(c.job().units());
    told.add(
        c.say(
            piece.soffitPieces().size() > 1 ? "ticket.soffit-two" : "ticket.soffit-one",
            f.tape(s.length()),
            f.tape(s.depth()),
            f.withUnit(s.thickness()),
            amounts.mass(s.massKg())));
    if (piece.soffitPieces().size() > 1) {
      told.add(c.say("ticket.soffit-mirror", piece.soffitPieces().get(1).mark()));
    }
    told.add(
        c.say(
            words -> words.say("ticket.soffit-ends", end(words, s.left()), end(words, s.right()))));
    told.add(c.say("ticket.soffit-" + s.joint().word(), amounts.mass(piece.mass().kg() + apart())));
    if (s.relief().isPositive()) {
      told.add(c.say("ticket.soffit-relief", f.withUnit(s.relief())));
    }
    if (!s.notches().isEmpty()) {
      // Slots in both ends are alike.
      SoffitNotch n = s.notches().get(0);
      String edge = s.notches().size() > 1 ? "both" : n.edge().word();
      told.add(c.say(words -> slot(words, n, edge)));
      told.add(c.say(words -> screw(words, n.anchor())));
    }
    if (!s.held()) {
      told.add(c.say("ticket.soffit-loose"));
    }
    told.add(c.say("ticket.soffit-prop"));
    return told;
  }

  // What of the soffit the stone's own mass leaves out.
  private double apart() {
    return piece.leg().depth().isPositive()
        ? 0
        : piece.soffitPieces().stream().mapToDouble(SoffitPiece::massKg).sum();
  }

  private String slot(Words words, SoffitNotch n, String edge) {
    LengthFormat f = c.format();
    return words.say(
        "ticket.soffit-slot-" + edge,
        f.tape(n.place()),
        f.tape(n.mouth()),
        f.tape(n.run()),
        LengthFormat.degrees(n.slant()),
        f.tape(n.plunge()),
        f.tape(n.cover()));
  }

  private String screw(Words words, Anchor a) {
    LengthFormat f = c.format();
    return a.screw() == null
        ? words.say("ticket.soffit-no-screw", AnchorWords.behind(words, a.behind()))
        : words.say(
            "ticket.soffit-screw",
            f.withUnit(a.screw()),
            f.withUnit(f.grid().ticks(f.grid().floor(a.penetration()))),
            AnchorWords.holds(words, a));
  }

  private static String end(Words words, SoffitPiece.End end) {
    return words.say(
        switch (end.longPoint()) {
          case NEITHER -> "ticket.soffit-end-square";
          case TOP -> "ticket.soffit-end-upper";
          case BOTTOM -> "ticket.soffit-end-under";
        },
        LengthFormat.degrees(end.offSquare()));
  }
}
