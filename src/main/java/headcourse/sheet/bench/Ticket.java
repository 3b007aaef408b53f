package headcourse.sheet.bench;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.sheet.MarkRuns;
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
 * @param blanks where those come from whose blank is known, in the same order
 * @param number from 1
 * @param of how many tickets there are
 */
record Ticket(HeadWork head, List<Piece> pieces, List<Origin> blanks, int number, int of) {
  /** A blank, and where on it a stone begins, from its left end. */
  record Origin(String blank, Length at) {}

  Ticket {
    pieces = List.copyOf(pieces);
    blanks = List.copyOf(blanks);
  }

  /** The tickets of a job: by opening, in setting order of their first stone. */
  static List<Ticket> of(ShopWork work) {
    Map<String, StockPlan.CutBlank> blanks = new TreeMap<>();
    Map<String, StockPlan.Cut> cuts = new TreeMap<>();
    for (StockPlan.CutBlank b : work.stock().blanks()) {
      for (StockPlan.Cut cut : b.cuts()) {
        blanks.putIfAbsent(cut.stone(), b);
        cuts.putIfAbsent(cut.stone(), cut);
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
          pieces.stream()
              .filter(p -> blanks.containsKey(p.mark()))
              .map(p -> new Origin(blanks.get(p.mark()).id(), cuts.get(p.mark()).at()))
              .toList();
      tickets.add(new Ticket(heads.get(e.getKey()), pieces, from, n, groups.size()));
    }
    return tickets;
  }

  /** The first of the stones. */
  Piece piece() {
    return pieces.get(0);
  }

  /** Where its stones come from, blanks with the same place on them together. */
  String from(SheetContext c) {
    return c.say(w -> w.say("ticket.from") + " " + String.join("; ", origins(c, w)));
  }

  private List<String> origins(SheetContext c, Words words) {
    Map<Length, List<String>> byPlace = new TreeMap<>();
    for (Origin o : blanks) {
      List<String> there = byPlace.computeIfAbsent(o.at(), k -> new ArrayList<>());
      if (!there.contains(o.blank())) {
        there.add(o.blank());
      }
    }
    List<String> places = new ArrayList<>();
    byPlace.forEach(
        (at, ids) ->
            places.add(words.say("ticket.at", MarkRuns.ofIds(ids), c.format().withUnit(at))));
    return places;
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
