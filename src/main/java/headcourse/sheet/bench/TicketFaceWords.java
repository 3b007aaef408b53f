package headcourse.sheet.bench;

import headcourse.bench.ExposedEdge;
import headcourse.bench.Piece;
import headcourse.bench.Rake;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.job.Stone;
import headcourse.layout.Side;
import headcourse.layout.VSoffit;
import headcourse.sheet.SheetContext;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is written under a ticket's face: the key's side, rakes, long points, height, the arris
 * under a curve, blanks of stones alike, edges to dress.
 */
record TicketFaceWords(SheetContext c, Ticket ticket, TicketType type) {
  private static final double PAD = 2;

  double height(double width, List<String> loose) {
    return flow(new Board(), 0, 0, width, loose);
  }

  void draw(Board b, Box box, List<String> loose) {
    flow(b, box.minX(), box.minY(), box.width(), loose);
  }

  private Piece piece() {
    return ticket.piece();
  }

  private double flow(Board b, double left, double top, double width, List<String> loose) {
    double x = left + PAD;
    double w = width - 2 * PAD;
    double y = keySide(b, x, top, w);
    b.line(left, y, left + width, y, Pen.FINE);
    y += 2;
    Side side = piece().stone().side();
    String inner = c.keyed(piece()) ? "key-side" : "centre-side";
    String l = side == Side.CENTRE ? "left" : side == Side.LEFT ? "outer" : inner;
    String r = side == Side.CENTRE ? "right" : side == Side.RIGHT ? "outer" : inner;
    for (String rake : rakes(l, r)) {
      y = TextFlow.paragraph(b, x, y, w, rake, fitting(rake, w));
    }
    String height = c.say("ticket.height", c.format().withUnit(piece().stone().height()));
    y = TextFlow.paragraph(b, x, y, w, height, type.note());
    if (!loose.isEmpty()) {
      String diagonals = c.say("ticket.diagonals", String.join(" / ", loose));
      y = TextFlow.paragraph(b, x, y, w, diagonals, type.note());
    }
    Optional<VSoffit> v = VSoffit.of(piece().stone());
    if (v.isPresent()) {
      String deep = c.say("ticket.v", c.format().withUnit(v.get().depth()));
      y = TextFlow.paragraph(b, x, y, w, deep, type.body().inBold());
      y = TextFlow.paragraph(b, x, y, w, vee(v.get()), type.note().inBold());
    }
    String arris = new TicketArris(c, piece(), type).told();
    if (!arris.isEmpty()) {
      y = TextFlow.paragraph(b, x, y, w, arris, type.note().inBold());
    }
    if (ticket.blanks().size() > 1) {
      y = TextFlow.paragraph(b, x, y, w, ticket.from(c), type.note().inBold());
    }
    if (!piece().exposed().isEmpty()) {
      y += 0.4;
      b.line(left, y, left + width, y, Pen.FINE);
      y = TextFlow.paragraph(b, x, y + 2, w, c.say(this::dress), type.note());
    }
    return y;
  }

  // How the V is cut, and what it leaves of a corner.
  private String vee(VSoffit v) {
    if (piece().returnDepth().isPositive()) {
      Length left = piece().thickness().minus(v.depth());
      return c.say("ticket.v-corner", c.format().withUnit(left));
    }
    return c.say(piece().soffitPieces().isEmpty() ? "ticket.v-cut" : "ticket.v-flat");
  }

  private String dress(Words words) {
    // Edges that show alike share an entry.
    Map<List<String>, Set<String>> edges = new LinkedHashMap<>();
    for (ExposedEdge e : piece().exposed()) {
      edges
          .computeIfAbsent(
              List.of(e.why().name().toLowerCase(Locale.ROOT), c.format().withUnit(e.length())),
              k -> new LinkedHashSet<>())
          .add(ticket.edge(c, words, e.edge()));
    }
    boolean split = c.job().stone().edges() == Stone.Edges.SPLIT;
    StringBuilder dress =
        new StringBuilder(words.say(split ? "ticket.dress-split" : "ticket.dress"));
    String join = " ";
    for (var e : edges.entrySet()) {
      String which = String.join(" + ", e.getValue());
      dress.append(join);
      dress.append(words.say("ticket.dress-" + e.getKey().get(0), which, e.getKey().get(1)));
      join = "; ";
    }
    return dress.toString();
  }

  private Lettering fitting(String text, double width) {
    return LabelShape.width(text, type.body()) <= width ? type.body() : type.note();
  }

  private double keySide(Board b, double x, double top, double w) {
    Side side = piece().stone().side();
    double y = top;
    if (side == Side.CENTRE) {
      return y;
    }
    boolean left = side == Side.LEFT;
    Lettering bold = type.body().inBold();
    for (String word :
        c.words().each(c.keyed(piece()) ? "ticket.key-side" : "ticket.centre-side")) {
      String text = left ? word + " →" : "← " + word;
      y += bold.height();
      b.text(left ? x + w : x, y, text, bold, left ? Align.END : Align.START);
      y += bold.height() * 0.6;
    }
    return y;
  }

  // Edges that lean alike are told of together.
  private List<String> rakes(String left, String right) {
    String both = rake("both", piece().left());
    return both.equals(rake("both", piece().right()))
        ? List.of(both)
        : List.of(rake(left, piece().left()), rake(right, piece().right()));
  }

  private String rake(String edge, Rake rake) {
    String key =
        switch (rake.longPoint()) {
          case NEITHER -> "ticket.rake-square";
          case TOP -> "ticket.rake-long-top";
          case BOTTOM -> "ticket.rake-long-bottom";
        };
    return c.say(
        w ->
            w.say(
                key,
                w.say("ticket.edge-" + edge),
                LengthFormat.degrees(rake.offSquare()),
                c.format().tape(rake.offset()),
                c.format().tape(rake.over())));
  }
}
