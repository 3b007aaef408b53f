package headcourse.sheet.bench;

import headcourse.bench.EdgeName;
import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.SheetContext;
import headcourse.stock.StockPlan;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What one ticket tells of: stones that are cut alike.
 *
 * @param head the head of the first of them
 * @param pieces the stones, in setting order
 * @param blanks where they come from: every cut of them, in the order of the cutting plan
 * @param number from 1
 */
record Ticket(HeadWork head, List<Piece> pieces, List<Origin> blanks, int number) {
  /**
   * A blank, where on its lower edge a stone begins, from its left end, and what of the stone it
   * gives.
   */
  record Origin(String blank, Length at, StockPlan.Part part) {}

  Ticket {
    pieces = List.copyOf(pieces);
    blanks = List.copyOf(blanks);
  }

  /** The tickets of a job: by opening, in setting order of their first stone. */
  static List<Ticket> of(ShopWork work) {
    // Several to a stone where openings are identical, or where it is made of two flats.
    Map<String, PlacedStone> stones = new TreeMap<>();
    work.heads().forEach(h -> h.pieces().forEach(p -> stones.put(p.mark(), p.stone())));
    Map<String, List<Origin>> cuts = new TreeMap<>();
    for (StockPlan.CutBlank b : work.stock().blanks()) {
      for (StockPlan.Cut cut : b.cuts()) {
        cuts.computeIfAbsent(cut.stone(), k -> new ArrayList<>())
            .add(new Origin(b.id(), OnBlank.of(stones.get(cut.stone()), cut).foot(), cut.part()));
      }
    }
    Map<Integer, List<Piece>> groups = new LinkedHashMap<>();
    Map<Integer, HeadWork> heads = new LinkedHashMap<>();
    for (HeadWork head : work.heads()) {
      for (Piece p : head.inSettingOrder()) {
        groups.computeIfAbsent(p.alike(), k -> new ArrayList<>()).add(p);
        heads.putIfAbsent(p.alike(), head);
      }
    }
    List<Ticket> tickets = new ArrayList<>();
    int n = 0;
    for (var e : groups.entrySet()) {
      n++;
      List<Piece> pieces = e.getValue();
      List<Origin> from =
          pieces.stream().flatMap(p -> cuts.getOrDefault(p.mark(), List.of()).stream()).toList();
      tickets.add(new Ticket(heads.get(e.getKey()), pieces, from, n));
    }
    return tickets;
  }

  /** The first of the stones. */
  Piece piece() {
    return pieces.get(0);
  }

  /** Where its stones come from. */
  String from(SheetContext c) {
    return c.say(words -> new TicketOrigins(c, words).told(blanks));
  }

  /**
   * The short name of an edge: towards the key, the crown or the centre line, or away from it; left
   * or right where stones of both sides share the ticket.
   */
  String edge(SheetContext c, Words words, EdgeName edge) {
    return words.say("ticket.edge-short-" + name(c, edge));
  }

  /** The same by the name that words of edges go by. */
  String name(SheetContext c, EdgeName edge) {
    if (edge == EdgeName.TOP || edge == EdgeName.SOFFIT) {
      return edge.word();
    }
    if (bothSides() || piece().stone().side() == Side.CENTRE) {
      return left(edge) ? "left" : "right";
    }
    if (edge == EdgeName.OUTER) {
      return "outer";
    }
    return head.layout().curved() ? "crown" : c.keyed(piece()) ? "inner" : "centre";
  }

  /** Whether an edge is the left one, seen from outside. */
  boolean left(EdgeName edge) {
    return switch (edge) {
      case LEFT -> true;
      case OUTER -> piece().stone().side() == Side.LEFT;
      case INNER -> piece().stone().side() == Side.RIGHT;
      default -> false;
    };
  }

  /** Whether stones left and right of the centre line are cut by it. */
  boolean bothSides() {
    return pieces.stream().map(p -> p.stone().side()).distinct().count() > 1;
  }

  /** Whether its stones were cut before. */
  boolean cutAlready() {
    return piece().stone().fitted();
  }

  /** How many are to be cut, identical openings counted. */
  int count(ShopWork work) {
    int n = 0;
    for (HeadWork head : work.heads()) {
      long here = head.pieces().stream().filter(p -> p.alike() == piece().alike()).count();
      n += (int) here * head.layout().opening().count();
    }
    return n;
  }

  /** Setting numbers of its stones, ascending. */
  List<Integer> setOrders() {
    return pieces.stream().map(Piece::setOrder).sorted(Comparator.naturalOrder()).toList();
  }
}
