package headcourse.sheet.bench;

import headcourse.bench.Notch;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.sheet.SheetContext;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * The ticket's notches: the slot of each edge at 1:1 as seen from above, left as left from outside,
 * with the bed behind; beyond the bed, not to scale, every layer that the screw passes and what it
 * ends in, grey where it holds.
 */
final class TicketNotch {
  private static final double PAD = 2;

  /** A thicker bed than this is broken off, mm. */
  private static final double BED = 5;

  /** How far the wall is drawn beyond an edge, mm. */
  private static final double BEYOND = 5;

  /** Stone between two slots and the break, mm. */
  private static final double STONE = 3;

  /** Room beside an edge without sizes, mm. */
  private static final double TWIN = 6.5;

  private final SheetContext c;
  private final Ticket ticket;
  private final TicketType type;
  private final Optional<Notch> left;
  private final Optional<Notch> right;
  private final String title;
  private final TicketStrips strips;

  /** How far below the panel's upper edge the figure begins, mm. */
  private final double top;

  /** Whether both edges have the same slot; its sizes stand at the left one. */
  private final boolean twins;

  /** Whether the slots of both edges stand side by side. */
  private final boolean abreast;

  /** A notch's panel of a width, mm. */
  TicketNotch(SheetContext c, Ticket ticket, TicketType type, double width) {
    this.c = c;
    this.ticket = ticket;
    this.type = type;
    List<Notch> notches = ticket.piece().notches();
    this.left = notches.stream().filter(n -> ticket.left(n.edge())).findFirst();
    this.right = notches.stream().filter(n -> !ticket.left(n.edge())).findFirst();
    this.title = title();
    this.top = 2.4 + type.height(title, width - 2 * PAD, type.note());
    this.twins =
        left.isPresent()
            && right.isPresent()
            && left.get().mouth().equals(right.get().mouth())
            && left.get().run().equals(right.get().run());
    double need = left.map(this::aside).orElse(3.0);
    need += twins ? TWIN : right.map(this::aside).orElse(3.0);
    need += left.map(this::wide).orElse(0.0) + right.map(this::wide).orElse(0.0);
    this.abreast = need <= width;
    this.strips =
        notches.isEmpty()
            ? null
            : TicketStrips.of(c, left.orElseGet(right::get), type, behind(width));
  }

  // How wide the layers are drawn; as in figure().
  private double behind(double width) {
    if (left.isEmpty() || right.isEmpty() || !abreast) {
      double aside =
          Math.max(left.map(this::aside).orElse(0.0), right.map(this::aside).orElse(0.0));
      return width - aside - 3 + 2 * BEYOND + 1.8;
    }
    return width - aside(left.get()) - (twins ? TWIN : aside(right.get())) + 3 * BEYOND;
  }

  private String title() {
    if (left.isEmpty() && right.isEmpty()) {
      return c.say("ticket.no-notch");
    }
    if (left.isPresent() && right.isPresent()) {
      return c.say("ticket.notch-both");
    }
    Notch n = left.orElseGet(right::get);
    return c.say(
        words ->
            words.say(
                left.isPresent() ? "ticket.notch-left" : "ticket.notch-right",
                ticket.edge(c, words, n.edge())));
  }

  private double aside(Notch n) {
    return Math.max(13, LabelShape.width(c.format().tape(n.mouth()), type.edge()) + 7.5);
  }

  private double wide(Notch n) {
    return n.run().mm() + STONE;
  }

  private double bed() {
    double proud = Math.max(0, ticket.piece().stone().proud().mm());
    return c.job().wall().bed().mm() + proud;
  }

  private double shown() {
    return Math.min(bed(), BED);
  }

  private double one() {
    double figure = strips.height() + shown() + ticket.piece().thickness().mm();
    double most = 0;
    for (Notch n : ticket.piece().notches()) {
      String run = c.format().tape(n.run());
      most = Math.max(most, TicketSection.Outer.high(run, type.edge()));
    }
    return figure + most + 0.4;
  }

  /** Whether the slot of an edge with its sizes has room in a width, mm. */
  boolean fits(double width) {
    return ticket.piece().notches().stream().allMatch(n -> aside(n) + wide(n) + 3 <= width);
  }

  double height() {
    if (strips == null) {
      return top;
    }
    boolean two = left.isPresent() && right.isPresent() && !abreast;
    return top + (two ? 2 * one() + type.pitch() : one());
  }

  void draw(Board board, Box box) {
    board.group(
        Role.NOTES,
        "",
        "",
        g ->
            type.paragraph(
                g, box.minX() + PAD, box.minY() + 2.4, box.width() - 2 * PAD, title, type.note()));
    if (strips == null) {
      return;
    }
    double y = box.minY() + top;
    if (abreast || left.isEmpty() || right.isEmpty()) {
      figure(board, box, y, left, right);
    } else {
      figure(board, box, y, left, Optional.empty());
      figure(board, box, y + one() + type.pitch(), Optional.empty(), right);
    }
  }

  private void figure(
      Board board, Box box, double y, Optional<Notch> onLeft, Optional<Notch> onRight) {
    Notch n = onLeft.orElseGet(onRight::get);
    String which = onLeft.isPresent() ? (onRight.isPresent() ? "both" : "left") : "right";
    board.group(
        Role.FIGURE,
        "",
        c.say(
            "ticket.notch-alt-" + which,
            c.format().withUnit(n.mouth()),
            c.format().withUnit(n.run())),
        g -> figure(g, box, y, onLeft.orElse(null), onRight.orElse(null)));
  }

  // Paper: y down from the wall through the back to the face; the stone between x0 and x1.
  private void figure(Board g, Box box, double y, Notch onLeft, Notch onRight) {
    double t = ticket.piece().thickness().mm();
    double x0 = box.minX() + (onLeft == null ? 3 : aside(onLeft));
    boolean bare = twins && onLeft != null;
    double x1 = box.maxX() - (onRight == null ? 3 : bare ? TWIN : aside(onRight));
    double wall = y + strips.height();
    double back = wall + shown();
    double middle = (x0 + x1) / 2;
    if (onLeft != null && onRight != null) {
      g.outline(body(x0, middle - 0.8, back, t), Shade.STONE, Pen.CUT);
      g.outline(body(x1, middle + 0.8, back, t), Shade.STONE, Pen.CUT);
    } else {
      g.outline(
          onLeft != null ? body(x0, x1, back, t) : body(x1, x0, back, t), Shade.STONE, Pen.CUT);
    }
    double from = onLeft == null ? x0 - 1.8 : x0 - BEYOND;
    double to = onRight == null ? x1 + 1.8 : x1 + BEYOND;
    if (bed() <= BED) {
      g.line(from, wall, to, wall, Pen.CUT);
    }
    boolean both = onLeft != null && onRight != null;
    Box behind = new Box(onLeft == null ? from : from - BEYOND, y, to, wall);
    if (onLeft == null) {
      behind = new Box(from, y, to + BEYOND, wall);
    }
    strips.grounds(g, behind);
    double leftEnd = behind.minX() + 1;
    double rightEnd = behind.maxX() - 1;
    if (onLeft != null) {
      slot(g, x0, 1, back, onLeft, new Box(from, wall, both ? middle - 0.8 : to, back + t));
      sizes(g, x0, 1, back, t, onLeft);
      // The layers are shown once.
      leftEnd = strips.screw(g, onLeft, behind, 1);
    }
    if (onRight != null) {
      slot(g, x1, -1, back, onRight, new Box(both ? middle + 0.8 : from, wall, to, back + t));
      if (!bare) {
        sizes(g, x1, -1, back, t, onRight);
      }
      rightEnd = both ? rightEnd : strips.screw(g, onRight, behind, -1);
    }
    strips.words(g, behind, leftEnd, rightEnd, onLeft == null);
    Align align = onLeft == null ? Align.START : both ? Align.MIDDLE : Align.END;
    words(g, onLeft == null ? x0 : x1, align, (x0 + x1) / 2, wall, back, t);
    hatch(g, x0, x1, wall, back);
  }

  // From its edge to where it is broken off.
  private static Path body(double edge, double end, double back, double t) {
    return Path.polygon(
        new Point(edge, back),
        new Point(end, back),
        new Point(end + 1.2, back + t * 0.3),
        new Point(end - 1.2, back + t * 0.7),
        new Point(end, back + t),
        new Point(edge, back + t));
  }

  private void slot(Board g, double edge, int in, double back, Notch n, Box room) {
    new NotchSlot(c, n, edge, in, back).draw(g, room);
  }

  private void sizes(Board g, double edge, int in, double back, double t, Notch n) {
    var sizes = new TicketSection.Outer(g, type.edge());
    Point mouth = new Point(edge, back + n.mouth().mm());
    String deep = c.format().tape(n.mouth());
    if (in > 0) {
      sizes.left(edge, back, mouth.y(), deep);
    } else {
      sizes.right(edge, back, mouth.y(), deep);
    }
    String run = c.format().tape(n.run());
    double far = edge + in * n.run().mm();
    sizes.under(Math.min(edge, far), Math.max(edge, far), back + t, run);
  }

  private void words(
      Board g, double end, Align align, double middle, double wall, double back, double t) {
    double h = type.note().height();
    double x = align == Align.MIDDLE ? middle : align == Align.END ? end - 2.4 : end + 2.4;
    word(g, x, back + t - 1.4, align, c.words().each("ticket.face-word").get(0));
    word(g, x, back + h + 1.4, align, c.words().each("ticket.back").get(0));
    String bed = c.words().each("ticket.bed", c.format().tape(Length.mm(bed()))).get(0);
    word(g, x, (wall + back + h) / 2, align, bed);
  }

  // On a broken edge the word stands clear of the break.
  private void word(Board g, double x, double y, Align align, String text) {
    List<Mark.Label> tries =
        align == Align.MIDDLE
            ? List.of(
                new Mark.Label(new Point(x - 2.4, y), text, type.note(), Align.END, 0),
                new Mark.Label(new Point(x + 2.4, y), text, type.note(), Align.START, 0),
                new Mark.Label(new Point(x, y), text, type.note(), align, 0))
            : List.of(new Mark.Label(new Point(x, y), text, type.note(), align, 0));
    g.firstFree(tries, 0.3);
  }

  // Dots of mortar in the bed, at places that only hang on the picture's own size.
  private static void hatch(Board g, double x0, double x1, double wall, double back) {
    int n = 0;
    for (double y = wall + 2; y < back - 1; y += 2.6) {
      for (double x = x0 + 1.5 + (n % 2) * 1.9; x < x1 - 1; x += 3.8) {
        double r = 0.22;
        if (g.ink()
            .free(
                List.of(
                    new Point(x - r, y - r),
                    new Point(x + r, y - r),
                    new Point(x + r, y + r),
                    new Point(x - r, y + r)),
                0.5)) {
          g.fill(Path.circle(new Point(x, y), r), Shade.BLACK);
        }
      }
      n++;
    }
  }
}
