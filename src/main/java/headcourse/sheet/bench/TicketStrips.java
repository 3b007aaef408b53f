package headcourse.sheet.bench;

import headcourse.bench.Anchor;
import headcourse.bench.Notch;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Backing;
import headcourse.job.Wall;
import headcourse.sheet.Holds;
import headcourse.sheet.SheetContext;
import headcourse.text.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * What lies behind the bed, a strip a layer and not to scale: grey holds. The screw goes on at its
 * slant, broken at the bed's back, and ends in what holds it.
 */
final class TicketStrips {
  private static final double BREAK = 1;

  private record Strip(String text, boolean holds) {}

  private final SheetContext c;
  private final TicketType type;
  private final List<Strip> strips;

  private TicketStrips(SheetContext c, TicketType type, List<Strip> strips) {
    this.c = c;
    this.type = type;
    this.strips = strips;
  }

  /** The strips behind a slot, the farthest from the stone first. */
  static TicketStrips of(SheetContext c, Notch n, TicketType type) {
    Wall wall = c.job().wall();
    Words words = c.words().singly().get(0);
    Backing behind = n.anchor().behind();
    List<Strip> strips = new ArrayList<>();
    strips.add(new Strip(Holds.name(words, behind), behind.kind().holds()));
    if (wall.sheathing().thickness().isPositive()) {
      String thick = c.format().tape(wall.sheathing().thickness());
      strips.add(new Strip(words.say("ticket.sheathing", thick), wall.sheathing().holds()));
    }
    if (wall.scratch().isPositive()) {
      String thick = c.format().tape(wall.scratch());
      strips.add(new Strip(words.say("ticket.scratch", thick), false));
    }
    return new TicketStrips(c, type, strips);
  }

  private double each() {
    return type.note().height() * 1.4;
  }

  double height() {
    return strips.size() * each() + BREAK;
  }

  /** The layers' areas and the lines between them, which stop short of the words. */
  void grounds(Board g, Box box) {
    double y = box.minY();
    for (Strip s : strips) {
      g.fill(Path.rect(box.minX(), y, box.width(), each()), s.holds ? Shade.STONE : Shade.WHITE);
      y += each();
    }
  }

  /** What the layers are, at the one or the other end; then the lines between them. */
  void words(Board g, Box box, double from, double to, boolean start) {
    double y = box.minY();
    for (Strip s : strips) {
      double base = y + (each() + type.note().height()) / 2;
      String text = fitted(type.note().written(s.text), to - from);
      double wide = LabelShape.width(text, type.note());
      g.text(start ? from : to, base, text, type.note(), start ? Align.START : Align.END);
      double x0 = start ? from + wide + 0.8 : box.minX();
      g.line(x0, y + each(), start ? box.maxX() : to - wide - 0.8, y + each(), Pen.FINE);
      y += each();
    }
  }

  // The job's own names may be long.
  private String fitted(String text, double width) {
    String t = text;
    while (t.length() > 2 && LabelShape.width(t, type.note()) > width) {
      t = t.substring(0, t.length() - 2).strip() + "…";
    }
    return t;
  }

  /**
   * The screw.
   *
   * @param in 1 where the stone lies to the right of its edge, −1 where to the left
   * @return where words may begin beside it
   */
  double screw(Board g, Notch n, Box box, int in) {
    Anchor a = n.anchor();
    double edge = in > 0 ? box.minX() : box.maxX();
    if (a.screw() == null) {
      return edge + in;
    }
    boolean inBacking = a.holdsIn() != Backing.Kind.SHEATHING;
    double tip = box.minY() + each() * (inBacking ? 0.35 : 1.35);
    double deep = box.maxY() - BREAK - tip;
    double aside = deep / Math.tan(n.slant().radians());
    double half = c.job().fastener().shank().mm() / 2 / Math.sin(n.slant().radians());
    double x = edge + in * (2 + half);
    double foot = box.maxY() - BREAK;
    double point = each() * 0.5;
    double under = x + in * aside * (1 - point / deep);
    Path shank =
        Path.polygon(
            new Point(x - half, foot),
            new Point(x + half, foot),
            new Point(under + half, tip + point),
            new Point(x + in * aside, tip),
            new Point(under - half, tip + point));
    g.outline(shank, Shade.WHITE, Pen.EDGE);
    return x + in * (aside + half + 1);
  }
}
