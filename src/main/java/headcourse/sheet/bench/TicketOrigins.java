package headcourse.sheet.bench;

import headcourse.sheet.MarkRuns;
import headcourse.sheet.SheetContext;
import headcourse.sheet.bench.Ticket.Origin;
import headcourse.stock.StockPlan;
import headcourse.text.Words;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Says which blanks stones come from, and where on them: places on one blank together, or blanks
 * with the same place, whichever is shorter.
 */
final class TicketOrigins {
  private final SheetContext c;
  private final Words words;

  TicketOrigins(SheetContext c, Words words) {
    this.c = c;
    this.words = words;
  }

  /** All of them: whole stones, then faces, then soffit strips. */
  String told(List<Origin> origins) {
    List<String> all = new ArrayList<>();
    for (StockPlan.Part part : StockPlan.Part.values()) {
      List<Origin> of = origins.stream().filter(o -> o.part() == part).toList();
      if (!of.isEmpty()) {
        String places = shorter(byPlace(of), byBlank(of));
        all.add(words.say("ticket.from-" + part.word()) + " " + places);
      }
    }
    return String.join("; ", all);
  }

  private static String shorter(String a, String b) {
    return b.length() < a.length() ? b : a;
  }

  private String byPlace(List<Origin> origins) {
    Map<Length, List<String>> by = new TreeMap<>();
    for (Origin o : origins) {
      List<String> there = by.computeIfAbsent(o.at(), k -> new ArrayList<>());
      if (!there.contains(o.blank())) {
        there.add(o.blank());
      }
    }
    List<String> texts = new ArrayList<>();
    by.forEach(
        (at, ids) ->
            texts.add(words.say("ticket.at", MarkRuns.ofIds(ids), c.format().withUnit(at))));
    return String.join("; ", texts);
  }

  private String byBlank(List<Origin> origins) {
    Map<String, TreeSet<Length>> by = new LinkedHashMap<>();
    for (Origin o : origins) {
      by.computeIfAbsent(o.blank(), k -> new TreeSet<>()).add(o.at());
    }
    List<String> texts = new ArrayList<>();
    by.forEach(
        (blank, at) -> {
          List<String> places = at.stream().map(c.format()::withUnit).toList();
          texts.add(words.say("ticket.at", blank, String.join(", ", places)));
        });
    return String.join("; ", texts);
  }
}
