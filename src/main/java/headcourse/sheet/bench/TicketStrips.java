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
    return type.note().height() * 1.5;
  }

  double height() {
    return strips.size() * each() + BREAK;
  }

  void draw(Board g, Notch n, Box box) {
    double y = box.minY();
    for (Strip s : strips) {
      Path area = Path.rect(box.minX(), y, box.width(), each());
      g.fill(area, s.holds ? Shade.STONE : Shade.WHITE);
      y += each();
    }
    double right = screw(g, n, box);
    y = box.minY();
    for (Strip s : strips) {
      double base = y + (each() + type.note().height()) / 2;
      String text = fitted(s.text, box.maxX() - 1 - right);
      g.text(box.maxX() - 1, base, text, type.note(), Align.END);
      double words = LabelShape.width(text, type.note()) + 1.6;
      g.line(box.minX(), y + each(), box.maxX() - words, y + each(), Pen.FINE);
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

  /** The screw; gives the right end of what is drawn. */
  private double screw(Board g, Notch n, Box box) {
    Anchor a = n.anchor();
    if (a.screw() == null) {
      return box.minX() + 1;
    }
    boolean inBacking = a.holdsIn() != Backing.Kind.SHEATHING;
    double tip = box.minY() + each() * (inBacking ? 0.35 : 1.35);
    double deep = box.maxY() - BREAK - tip;
    double aside = deep / Math.tan(n.slant().radians());
    double half = c.job().fastener().shank().mm() / 2 / Math.sin(n.slant().radians());
    double x = box.minX() + 2 + half;
    double foot = box.maxY() - BREAK;
    double point = each() * 0.5;
    double under = aside * (1 - point / deep);
    Path shank =
        Path.polygon(
            new Point(x - half, foot),
            new Point(x + half, foot),
            new Point(x + under + half, tip + point),
            new Point(x + aside, tip),
            new Point(x + under - half, tip + point));
    g.outline(shank, Shade.WHITE, Pen.EDGE);
    return x + aside + half + 1;
  }
}
