package headcourse.sheet.bench;

import headcourse.bench.SawPass;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.sheet.SheetContext;
import headcourse.text.Words;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** The ticket's passes of the saw: each a picture with its edge, its setting and its depth. */
final class TicketSaw {
  private static final double PAD = 2;
  private static final double TOP = 1.6;

  private final SheetContext c;
  private final Ticket ticket;
  private final TicketType type;
  private final List<SawPass> passes;

  /** Whether every pass finds the piece lying the same way. */
  private final boolean oneLay;

  TicketSaw(SheetContext c, Ticket ticket, TicketType type) {
    this.c = c;
    this.ticket = ticket;
    this.type = type;
    this.passes = ticket.piece().saw();
    this.oneLay = passes.stream().map(SawPass::lay).distinct().count() == 1;
  }

  /** The least height at a width, mm; nothing where there is no work for the saw. */
  double height(double width) {
    return passes.isEmpty() && !ticket.cutAlready()
        ? 0
        : draw(new Board(), PAD, TOP, width - 2 * PAD) + 0.5;
  }

  void draw(Board board, Box box) {
    double w = box.width() - 2 * PAD;
    board.group(Role.TABLE, "", "", b -> draw(b, box.minX() + PAD, box.minY() + TOP, w));
  }

  private double draw(Board b, double x, double top, double w) {
    if (ticket.cutAlready()) {
      return stamp(b, x, top, w);
    }
    if (passes.isEmpty()) {
      return top;
    }
    double y = heading(b, x, top, w);
    int best = 2;
    double low = Double.POSITIVE_INFINITY;
    for (int columns : columns(w)) {
      double at = cells(new Board(), x, y, w, columns);
      if (at < low - 1e-9) {
        low = at;
        best = columns;
      }
    }
    return cells(b, x, y, w, best);
  }

  private double stamp(Board b, double x, double top, double w) {
    Lettering big = new Lettering(type.size().height() * 1.4, true);
    Lettering l = new Lettering(big.height() >= 7 ? 7 : 5, true);
    double y = top + 3;
    for (String text : c.words().each("ticket.stamp")) {
      y = type.paragraph(b, x + 4, y + 1, w - 8, text, l);
    }
    y = type.paragraph(b, x + 4, y, w - 8, c.say("ticket.stamp-why"), type.note()) + 1;
    b.stroke(Path.rect(x, top, w, y - top), Pen.OUTLINE);
    b.stroke(Path.rect(x + 1.2, top + 1.2, w - 2.4, y - top - 2.4), Pen.EDGE);
    return y + 1.5;
  }

  private double heading(Board b, double x, double top, double w) {
    Lettering head = type.body().inBold();
    double beside = x;
    for (String word : c.words().each("ticket.saw")) {
      b.text(beside, top + head.height(), word, head, Align.START);
      beside += LabelShape.width(word, head) + 2;
    }
    String how =
        c.say(
            words ->
                (oneLay ? words.say("ticket.lay-" + passes.get(0).lay().word()) + "; " : "")
                    + words.say("ticket.saw-how"));
    double low =
        type.paragraph(
            b,
            beside,
            top + head.height() - type.note().height(),
            x + w - beside,
            how,
            type.note());
    return Math.max(low, top + head.height() * 1.4) + 0.8;
  }

  // How many abreast are worth a look; not more than leave room for a setting.
  private List<Integer> columns(double w) {
    TreeSet<Integer> tries = new TreeSet<>();
    for (int n = 1; n <= Math.min(6, passes.size()); n++) {
      if (w / n >= 20 * type.factor() || n == 1) {
        tries.add(n);
      }
    }
    return List.copyOf(tries);
  }

  private double cells(Board b, double x, double top, double w, int columns) {
    double cell = w / columns;
    double y = top;
    double low = top;
    for (int i = 0; i < passes.size(); i++) {
      int column = i % columns;
      y = column == 0 ? low : y;
      low = Math.max(low, cell(b, x + column * cell, y, cell - 1, passes.get(i)) + 0.6);
    }
    return low;
  }

  // The picture beside the words where there is room for both, else above them.
  private double cell(Board b, double x, double y, double w, SawPass pass) {
    double wide = 17 * type.factor();
    double high = SawPicture.height(type);
    double need = 0;
    for (String word : TextFlow.unbroken(setting(singly(), pass))) {
      need = Math.max(need, LabelShape.width(word, type.edge()));
    }
    boolean beside = w - wide - 1 >= Math.min(need, 26 * type.factor());
    Box box = beside ? Box.of(x, y, wide, high) : Box.of(x, y, w, high);
    String title = Integer.toString(pass.number());
    new SawPicture(ticket, pass)
        .draw(b, box, c.say("ticket.pass-alt", title, ticket.edge(c, singly(), pass.edge())));
    return beside
        ? Math.max(y + high, words(b, x + wide + 1, y + 1, w - wide - 1, pass))
        : words(b, x, y + high + 0.8, w, pass);
  }

  private Words singly() {
    return c.words().singly().get(0);
  }

  private double words(Board b, double x, double top, double w, SawPass pass) {
    double y = top;
    Lettering big = type.edge();
    for (List<String> lines : c.words().singly().stream().map(s -> lines(s, pass)).toList()) {
      boolean first = big != type.note();
      String edge = first ? pass.number() + " " + lines.get(0) : lines.get(0);
      y = type.paragraph(b, x, y, w, edge, first ? type.note().inBold() : type.note());
      // No figure to be read at arm's length.
      boolean word = pass.template() && LabelShape.width(lines.get(1), big) > w;
      y = type.paragraph(b, x, y, w, lines.get(1), word ? type.note().inBold() : big);
      y = type.paragraph(b, x, y, w, lines.get(2), type.note());
      big = type.note();
    }
    return y;
  }

  // Edge, setting, depth and what is cut.
  private List<String> lines(Words words, SawPass pass) {
    String depth =
        words.say(
            pass.possible() ? "ticket.depth" : "ticket.not-possible",
            c.format().withUnit(deep(pass.depth())));
    List<String> last = new ArrayList<>(List.of(depth));
    // A blade through a corner that lies on its face goes through all that is under it.
    if (passes.stream().anyMatch(p -> apart(p.part()))) {
      last.add(words.say("ticket.part-" + pass.part().name().toLowerCase(Locale.ROOT)));
    }
    if (!oneLay) {
      last.add(words.say("ticket.lay-" + pass.lay().word()));
    }
    return List.of(
        ticket.edge(c, words, pass.edge()), setting(words, pass), String.join(", ", last));
  }

  private static boolean apart(SawPass.Part part) {
    return part == SawPass.Part.RETURN_LEG || part == SawPass.Part.SOFFIT_PIECE;
  }

  // Never less than it takes to cut through, but for the last digits of a sine.
  private Length deep(Length depth) {
    Grid grid = c.job().grid();
    return grid.ticks(grid.ceil(depth.minus(Length.mm(0.001))));
  }

  private static String setting(Words words, SawPass pass) {
    if (pass.template()) {
      return words.say("ticket.template");
    }
    // Never both: the planes of joints and tops hold the wall's normal, those of mitres the soffit.
    if (pass.tilt().radians() != 0) {
      return words.say("ticket.tilt", LengthFormat.degrees(pass.tilt()));
    }
    return pass.mitre().radians() == 0
        ? words.say("ticket.square")
        : words.say("ticket.fence", LengthFormat.degrees(pass.mitre()));
  }
}
