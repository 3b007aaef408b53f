package headcourse.sheet.bench;

import headcourse.bench.Anchor;
import headcourse.bench.Notch;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.drawing.TextFlow;
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

  /** Where there is next to no room, mm. */
  private static final double LEAST = 12;

  /** A layer, its name in as many lines as it takes. */
  private record Strip(List<String> lines, boolean holds) {
    double high(double line) {
      return lines.size() * line;
    }
  }

  private final SheetContext c;
  private final TicketType type;
  private final List<Strip> strips;

  private TicketStrips(SheetContext c, TicketType type, List<Strip> strips) {
    this.c = c;
    this.type = type;
    this.strips = strips;
  }

  /**
   * The strips behind a slot, the farthest from the stone first.
   *
   * @param width of the strips, mm
   */
  static TicketStrips of(SheetContext c, Notch n, TicketType type, double width) {
    Wall wall = c.job().wall();
    Words words = c.words().singly().get(0);
    Backing behind = n.anchor().behind();
    List<Strip> strips = new ArrayList<>();
    strips.add(new Strip(List.of(Holds.name(words, behind)), behind.kind().holds()));
    if (wall.sheathing().thickness().isPositive()) {
      String thick = c.format().tape(wall.sheathing().thickness());
      strips.add(
          new Strip(List.of(words.say("ticket.sheathing", thick)), wall.sheathing().holds()));
    }
    if (wall.scratch().isPositive()) {
      String thick = c.format().tape(wall.scratch());
      strips.add(new Strip(List.of(words.say("ticket.scratch", thick)), false));
    }
    TicketStrips set = new TicketStrips(c, type, strips);
    // More lines make it higher, and a screw that goes on at its slant takes more of its width.
    for (int lines = -1; lines != set.lines(); ) {
      lines = set.lines();
      set = set.wrapped(width - set.screwed(n) - 1);
    }
    return set;
  }

  private int lines() {
    return strips.stream().mapToInt(s -> s.lines.size()).sum();
  }

  private TicketStrips wrapped(double room) {
    List<Strip> set = new ArrayList<>();
    for (Strip s : strips) {
      String name = String.join(" ", s.lines);
      List<String> lines = TextFlow.lines(name, Math.max(room, LEAST), type.note());
      // Never fewer than before, so that it comes to an end.
      set.add(lines.size() < s.lines.size() ? s : new Strip(lines, s.holds));
    }
    return new TicketStrips(c, type, set);
  }

  private double each() {
    return type.note().height() * 1.4;
  }

  double height() {
    return lines() * each() + BREAK;
  }

  /** The layers' areas and the lines between them, which stop short of the words. */
  void grounds(Board g, Box box) {
    double y = box.minY();
    for (Strip s : strips) {
      double high = s.high(each());
      g.fill(Path.rect(box.minX(), y, box.width(), high), s.holds ? Shade.STONE : Shade.WHITE);
      y += high;
    }
  }

  /** What the layers are, at the one or the other end; then the lines between them. */
  void words(Board g, Box box, double from, double to, boolean start) {
    double y = box.minY();
    for (Strip s : strips) {
      double wide = 0;
      for (String line : s.lines) {
        double base = y + (each() + type.note().height()) / 2;
        wide = LabelShape.width(line, type.note());
        g.text(start ? from : to, base, line, type.note(), start ? Align.START : Align.END);
        y += each();
      }
      double x0 = start ? from + wide + 0.8 : box.minX();
      g.line(x0, y, start ? box.maxX() : to - wide - 0.8, y, Pen.FINE);
    }
  }

  // What of the width the screw takes, mm; as in screw().
  private double screwed(Notch n) {
    if (n.anchor().screw() == null) {
      return 1;
    }
    return 3 + 2 * half(n) + (height() - BREAK - tip(n)) / Math.tan(n.slant().radians());
  }

  private double half(Notch n) {
    return c.job().fastener().shank().mm() / 2 / Math.sin(n.slant().radians());
  }

  // How far below the strips' upper edge the screw ends: not far into what holds it, so that a
  // name of many lines there leaves it where it was.
  private double tip(Notch n) {
    double to = strips.get(0).high(each());
    if (n.anchor().holdsIn() == Backing.Kind.SHEATHING) {
      to += strips.get(1).high(each());
    }
    return to - 0.65 * each();
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
    double tip = box.minY() + tip(n);
    double deep = box.maxY() - BREAK - tip;
    double aside = deep / Math.tan(n.slant().radians());
    double half = half(n);
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
