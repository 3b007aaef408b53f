package headcourse.sheet.bench;

import headcourse.bench.EdgeName;
import headcourse.bench.ExposedEdge;
import headcourse.bench.Piece;
import headcourse.bench.Rake;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.job.Stone;
import headcourse.layout.Side;
import headcourse.layout.VSoffit;
import headcourse.sheet.MarkRuns;
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
record TicketFaceWords(SheetContext c, Ticket ticket, TicketType type, List<String> more) {
  private static final double PAD = 2;

  /** The height of it at a width, mm. */
  double height(double width) {
    return flow(new Board(), 0, 0, width);
  }

  void draw(Board board, Box box) {
    board.group(Role.NOTES, "", "", b -> flow(b, box.minX(), box.minY(), box.width()));
  }

  private Piece piece() {
    return ticket.piece();
  }

  private double flow(Board b, double left, double top, double width) {
    double x = left + PAD;
    double w = width - 2 * PAD;
    double y = keySide(b, x, top + 2, w);
    for (String rake : rakes()) {
      y = type.paragraph(b, x, y, w, rake, fitting(rake, w));
    }
    String height = c.say("ticket.height", c.format().withUnit(piece().stone().height()));
    String rising = c.format().tape(piece().measures().rising());
    String falling = c.format().tape(piece().measures().falling());
    String diagonals =
        rising.equals(falling)
            ? c.say("ticket.diagonals-alike", rising)
            : c.say("ticket.diagonals", rising, falling);
    y = type.paragraph(b, x, y, w, height + "; " + diagonals, type.note());
    Optional<VSoffit> v = VSoffit.of(piece().stone());
    if (v.isPresent()) {
      String deep = c.say("ticket.v", c.format().withUnit(v.get().depth()));
      y = type.paragraph(b, x, y, w, deep, type.body().inBold());
      y = type.paragraph(b, x, y, w, vee(v.get()), type.note().inBold());
    }
    String arris = new TicketArris(c, piece(), type).told();
    if (!arris.isEmpty()) {
      y = type.paragraph(b, x, y, w, arris, type.note().inBold());
    }
    if (ticket.blanks().size() > 1) {
      y = type.paragraph(b, x, y, w, ticket.from(c), type.note().inBold());
    }
    if (!piece().exposed().isEmpty()) {
      y = type.paragraph(b, x, y, w, c.say(this::dress), type.note());
    }
    for (String note : more) {
      y = type.paragraph(b, x, y, w, note, type.note());
    }
    y = new TicketArris(c, piece(), type).offsets(b, x, y, w);
    return y;
  }

  // How the V is cut, and what it leaves of a corner.
  private String vee(VSoffit v) {
    if (piece().leg().depth().isPositive()) {
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
      boolean both = e.getValue().size() == 2 && sides(e.getKey());
      String which = both ? words.say("ticket.edge-both") : String.join(", ", e.getValue());
      dress.append(join);
      dress.append(words.say("ticket.dress-" + e.getKey().get(0), which, e.getKey().get(1)));
      join = "; ";
    }
    return dress.toString();
  }

  // Whether the edges that show so are sides.
  private boolean sides(List<String> how) {
    return piece().exposed().stream()
        .filter(e -> e.why().name().toLowerCase(Locale.ROOT).equals(how.get(0)))
        .filter(e -> c.format().withUnit(e.length()).equals(how.get(1)))
        .noneMatch(e -> e.edge() == EdgeName.TOP || e.edge() == EdgeName.SOFFIT);
  }

  private Lettering fitting(String text, double width) {
    return LabelShape.width(text, type.body()) <= width ? type.body() : type.note();
  }

  // Stones of both sides that share a ticket each have an arrow of their own.
  private double keySide(Board b, double x, double top, double w) {
    double y = top;
    if (piece().stone().side() == Side.CENTRE) {
      return y;
    }
    String which =
        ticket.head().layout().curved()
            ? "ticket.crown-side"
            : c.keyed(piece()) ? "ticket.key-side" : "ticket.centre-side";
    if (ticket.bothSides()) {
      return y + bothSides(b, x, y, w, which);
    }
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      List<Piece> of = ticket.pieces().stream().filter(p -> p.stone().side() == side).toList();
      if (of.isEmpty()) {
        continue;
      }
      boolean left = side == Side.LEFT;
      for (String word : c.words().each(which)) {
        String text = left ? word + " →" : "← " + word;
        Lettering l = type.edge();
        l = LabelShape.width(text, l) <= w ? l : type.note().inBold();
        List<String> lines = TextFlow.lines(text, w, l);
        for (String line : lines) {
          y += l.height();
          b.text(left ? x + w : x, y, line, l, left ? Align.END : Align.START);
          y += l.height() * 0.6;
        }
      }
    }
    return y;
  }

  // Between an arrow each way with the stones that it is for.
  private double bothSides(Board b, double x, double top, double w, String which) {
    String left = "← " + marks(Side.RIGHT);
    String right = marks(Side.LEFT) + " →";
    List<String> words = c.words().each(which);
    Lettering l = type.edge();
    double wide = words.stream().mapToDouble(t -> LabelShape.width(t, l)).max().orElse(0);
    boolean fits = LabelShape.width(left, l) + wide + LabelShape.width(right, l) + 6 <= w;
    Lettering on = fits ? l : type.note().inBold();
    double start = x + LabelShape.width(left, on) + 3;
    double end = x + w - LabelShape.width(right, on) - 3;
    double y = top;
    for (String word : words) {
      for (String line : TextFlow.lines(word, end - start, on)) {
        y += on.height();
        b.text((start + end) / 2, y, line, on, Align.MIDDLE);
        y += on.height() * 0.6;
      }
    }
    b.text(x, top + on.height(), left, on, Align.START);
    b.text(x + w, top + on.height(), right, on, Align.END);
    return y - top;
  }

  private String marks(Side side) {
    return MarkRuns.of(ticket.pieces().stream().filter(p -> p.stone().side() == side).toList());
  }

  // Edges that lean alike are told of together.
  private List<String> rakes() {
    boolean leftOuter = piece().stone().side() == Side.LEFT;
    EdgeName left = leftOuter ? EdgeName.OUTER : EdgeName.INNER;
    EdgeName right = leftOuter ? EdgeName.INNER : EdgeName.OUTER;
    if (piece().stone().side() == Side.CENTRE) {
      left = EdgeName.LEFT;
      right = EdgeName.RIGHT;
    }
    String both = rake("both", piece().left());
    return both.equals(rake("both", piece().right()))
        ? List.of(both)
        : List.of(
            rake(ticket.name(c, left), piece().left()),
            rake(ticket.name(c, right), piece().right()));
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
