package headcourse.sheet.bench;

import headcourse.bench.Anchor;
import headcourse.bench.EdgeName;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.SawPass;
import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.sheet.Holds;
import headcourse.sheet.SheetContext;
import headcourse.text.SecondLanguage;
import headcourse.text.Words;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The ticket's work, step by step: notches, saw passes with how the piece lies, offsets. */
final class TicketCuts {
  private static final double PAD = 2;
  private final SheetContext c;
  private final Ticket ticket;
  private final Piece piece;
  private final TicketType type;

  TicketCuts(SheetContext c, Ticket ticket, TicketType type) {
    this.c = c;
    this.ticket = ticket;
    this.piece = ticket.piece();
    this.type = type;
  }

  double height(double width) {
    return flow(new Board(), 0, 0, width) + 0.5;
  }

  void draw(Board board, Box box) {
    board.group(Role.TABLE, "", "", b -> flow(b, box.minX(), box.minY(), box.width()));
  }

  private double flow(Board b, double left, double top, double width) {
    double x = left + PAD;
    double w = width - 2 * PAD;
    double y = notches(b, left, x, top, width);
    if (!piece.saw().isEmpty()) {
      y = saw(b, x, y, w);
    }
    double below = new TicketArris(c, piece, type).offsets(b, x, y + 2, w);
    if (below > y + 2) {
      b.line(left, y + 0.6, left + width, y + 0.6, Pen.FINE);
      y = below;
    }
    return y;
  }

  private double notches(Board b, double left, double x, double top, double width) {
    double y = top + 2;
    double w = width - 2 * PAD;
    LengthFormat f = c.format();
    Lettering bold = type.body().inBold();
    for (String text : c.words().each(words -> places(words, w))) {
      y = TextFlow.paragraph(b, x, y, w, text, y > top + 2 ? type.note().inBold() : bold);
    }
    List<String> told = new ArrayList<>();
    for (Notch n : piece.notches()) {
      String cut =
          c.say(
              "ticket.notch-figures",
              LengthFormat.degrees(n.slant()),
              f.tape(n.plunge()),
              f.tape(n.cover()));
      String screw = c.say(words -> screw(words, n.anchor()));
      if (!told.contains(cut + screw)) {
        told.add(cut + screw);
        y = TextFlow.paragraph(b, x, y, w, cut, type.note());
        y = TextFlow.paragraph(b, x, y, w, screw, type.note());
      }
    }
    if (!piece.notches().isEmpty()) {
      b.line(left, y, left + width, y, Pen.EDGE);
      y += 2;
    }
    return y;
  }

  private String screw(Words words, Anchor a) {
    return a.screw() == null
        ? Holds.none(words, a)
        : words.say("ticket.screw", Holds.screw(c, words, a), Holds.hold(c, words, a));
  }

  // Edges with slots at the same heights are told of together; all on one line where they fit.
  private String places(Words words, double width) {
    Map<String, Set<EdgeName>> edges = new LinkedHashMap<>();
    for (Notch n : piece.notches()) {
      String at =
          piece.notches().stream()
              .filter(o -> o.edge() == n.edge())
              .map(o -> c.format().tape(o.height()))
              .reduce((a, b) -> words.say("ticket.and", a, b))
              .orElseThrow();
      edges.computeIfAbsent(at, k -> new LinkedHashSet<>()).add(n.edge());
    }
    List<String> each = new ArrayList<>();
    edges.forEach((at, names) -> each.add(place(words, names, at)));
    String all = words.say("ticket.notch-up", String.join(", ", each));
    if (LabelShape.width(all, type.body().inBold()) <= width) {
      return all;
    }
    each.replaceAll(p -> words.say("ticket.notch-up", p));
    return String.join("\n", each);
  }

  private String place(Words words, Set<EdgeName> edges, String at) {
    List<String> names = edges.stream().map(e -> ticket.edge(c, words, e)).toList();
    String all = names.size() == 2 ? words.say("ticket.edge-both") : String.join(" + ", names);
    return words.say("ticket.notch-edge", all, at);
  }

  private record Lie(SawPass.Lay lay, SawPass.Part part) {}

  private double saw(Board b, double x, double top, double w) {
    Lettering head = type.body().inBold();
    List<String> words = c.words().each("ticket.saw");
    double beside = 2.5;
    double y = top;
    for (String word : words) {
      b.text(x, y + head.height(), word, head, Align.START);
      beside = Math.max(beside, LabelShape.width(word, head) + 2);
      y += head.height() * 1.5;
    }
    List<Lie> lies = piece.saw().stream().map(p -> new Lie(p.lay(), p.part())).distinct().toList();
    double two = lies(new Board(), x + beside, top, w - beside, lies, 2);
    double one = lies(new Board(), x + beside, top, w - beside, lies, 1);
    double at = lies(b, x + beside, top, w - beside, lies, one < two ? 1 : 2);
    y = Math.max(y, at);
    for (SawPass p : piece.saw()) {
      y = pass(b, x, y, w, p, letter(lies.indexOf(new Lie(p.lay(), p.part()))));
    }
    return y;
  }

  // How the piece lies, so many abreast.
  private double lies(Board b, double x, double top, double w, List<Lie> lies, int abreast) {
    double cell = w / abreast;
    double at = top;
    double low = top;
    for (int i = 0; i < lies.size(); i++) {
      int column = i % abreast;
      at = column == 0 ? low : at;
      low = Math.max(low, lie(b, x + column * cell, at, cell - 0.5, i, lies) + 1);
    }
    return low;
  }

  private static String letter(int i) {
    return Character.toString((char) ('A' + i));
  }

  private double lie(Board b, double x, double y, double w, int i, List<Lie> lies) {
    Lie lie = lies.get(i);
    double f = type.factor();
    LayPicture.draw(b, Box.of(x, y, 12 * f, 9.5 * f), piece, lie.lay, lie.part);
    Lettering bold = type.body().inBold();
    double at = x + 12.8 * f;
    b.text(at, y + bold.height(), letter(i), bold, Align.START);
    at += LabelShape.width(letter(i), bold) + 0.8;
    double low = y + 0.6;
    for (String key :
        List.of(
            "ticket.lay-" + lie.lay.word(),
            "ticket.part-" + lie.part.name().toLowerCase(Locale.ROOT))) {
      low = TextFlow.paragraph(b, at, low, x + w - at, c.say(key), type.note());
    }
    return Math.max(low, y + 10 * f);
  }

  // Number, lie, and a line in each language; the first is the one that the eye finds.
  private double pass(Board b, double x, double top, double w, SawPass pass, String letter) {
    Lettering big = type.body().inBold();
    b.text(x, top + big.height(), pass.number() + " " + letter, big, Align.START);
    double indent = LabelShape.width("0 M", big) + 1.6;
    double y = top;
    Lettering setting = big;
    List<String> lines = c.words().each(words -> told(words, pass));
    for (String line : lines) {
      y = pass(b, x + indent, y, w - indent, SecondLanguage.lines(line), setting);
      setting = type.note();
    }
    return lines.size() > 1 ? y + big.height() * 0.4 : y;
  }

  // Never less than it takes to cut through, but for the last digits of a sine.
  private Length deep(Length depth) {
    Grid grid = c.job().grid();
    return grid.ticks(grid.ceil(depth.minus(Length.mm(0.001))));
  }

  // Edge, depth and setting, each on a line of its own.
  private String told(Words words, SawPass pass) {
    String depth =
        words.say(
            pass.possible() ? "ticket.depth" : "ticket.not-possible",
            c.format().withUnit(deep(pass.depth())));
    String edge = ticket.edge(c, words, pass.edge());
    return String.join("\n", edge, depth, setting(words, pass));
  }

  // Depth and setting to the right, on a line of their own where they must.
  private double pass(Board b, double x, double top, double w, List<String> told, Lettering big) {
    Lettering note = type.note();
    double edge = LabelShape.width(told.get(0), note);
    double depth = LabelShape.width(told.get(1), note);
    double setting = LabelShape.width(told.get(2), big);
    if (edge + 2 + depth + 2.5 + setting > w) {
      double y = TextFlow.paragraph(b, x, top + 0.6, w, told.get(0) + ": " + told.get(1), note);
      return TextFlow.paragraph(b, x, y, w, told.get(2), big);
    }
    double y = top + big.height();
    b.text(x, y, told.get(0), note, Align.START);
    b.text(x + w, y, told.get(2), big, Align.END);
    // Depths stand in a column where the longest usual setting leaves room.
    double column = Math.max(edge + 2, Math.min(w - setting - 2.5 - depth, w * 0.26));
    b.text(x + column, y, told.get(1), note, Align.START);
    return top + big.height() * 1.4;
  }

  private static String setting(Words words, SawPass pass) {
    boolean fence = pass.mitre().radians() != 0;
    boolean tilt = pass.tilt().radians() != 0;
    String mitre = LengthFormat.degrees(pass.mitre());
    String blade = LengthFormat.degrees(pass.tilt());
    if (fence && tilt) {
      return words.say("ticket.both", mitre, blade);
    }
    return fence
        ? words.say("ticket.fence", mitre)
        : tilt ? words.say("ticket.tilt", blade) : words.say("ticket.square");
  }
}
