package headcourse.job.yaml;

import headcourse.job.Accepted;
import headcourse.job.Fitted;
import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads what the work itself reports: {@code fitted:}, {@code spoiled:} and {@code accept:}. */
final class FittedReader {
  private FittedReader() {}

  static List<Fitted> fitted(Section s, List<Opening> openings) {
    List<Fitted> all = new ArrayList<>();
    for (Opening o : openings) {
      if (!s.has(o.mark())) {
        continue;
      }
      Section stones = s.section(o.mark());
      for (String stone : stones.keys()) {
        if (stone.matches("K|[LR][1-9][0-9]{0,2}")) {
          all.add(stone(stones.item(stone), o.mark(), stone));
        }
      }
      stones.done(
          k -> Reading.quoted(k) + " is no stone's mark; expected K, L1, L2, ... or R1, R2, ...");
    }
    s.done(k -> "no opening has the mark " + Reading.quoted(k) + "; expected " + marks(openings));
    return all;
  }

  private static Fitted stone(Item item, String opening, String mark) {
    if (!item.isMap()) {
      Length width = item.length(Range.POSITIVE);
      return new Fitted(item.path(), opening, mark, width, null, null);
    }
    Section s = item.section();
    Fitted f =
        new Fitted(
            item.path(),
            opening,
            mark,
            s.needed("bottom", Range.POSITIVE, "the width at the bottom", Length.inches(1)),
            s.length("top", Range.POSITIVE, null),
            s.length("height", Range.POSITIVE, null));
    s.done();
    return f;
  }

  static List<String> spoiled(Section root, Stock stock) {
    Set<String> all = new LinkedHashSet<>();
    Map<String, Stock.Item> blanks = new HashMap<>();
    stock.items().forEach(b -> blanks.putIfAbsent(b.mark(), b));
    for (Item i : root.list("spoiled")) {
      String s = i.raw("a blank with its number, as C2#3");
      if (s == null) {
        continue;
      }
      if (!s.matches("[^#\\s]{1,16}#[1-9][0-9]{0,4}")) {
        i.error(Reading.quoted(s) + " names no piece; expected a blank with its number, as C2#3");
        continue;
      }
      String mark = s.substring(0, s.indexOf('#'));
      int number = Integer.parseInt(s.substring(s.indexOf('#') + 1));
      Stock.Item item = blanks.get(mark);
      if (item == null) {
        i.error("the stock has no blank " + Reading.quoted(mark) + "; expected a mark from stock:");
      } else if (!item.toOrder() && number > item.count()) {
        i.error("there are only " + item.count() + " of " + mark + "; expected a number to that");
      } else if (!all.add(s)) {
        i.error(s + " stands here a second time; keep one");
      }
    }
    return List.copyOf(all);
  }

  static List<Accepted> accepted(Section root, List<Opening> openings) {
    List<Accepted> all = new ArrayList<>();
    for (Item i : root.list("accept")) {
      Section s = i.section();
      String rule = s.text("rule");
      String opening = s.text("opening");
      String reason = s.text("reason");
      if (rule.isEmpty()) {
        root.in.error(s.path, i.span(), "the rule is missing; expected rule: with a rule's name");
      }
      if (reason.isEmpty()) {
        root.in.error(
            s.path,
            i.span(),
            "the reason is missing, and it is printed; expected reason: with a text");
      }
      if (!opening.isEmpty() && openings.stream().noneMatch(o -> o.mark().equals(opening))) {
        root.in.error(
            s.at("opening"),
            "no opening has the mark " + Reading.quoted(opening) + "; expected " + marks(openings));
      }
      s.done();
      all.add(new Accepted(s.path, rule, opening, reason));
    }
    return all;
  }

  private static String marks(List<Opening> openings) {
    return String.join(", ", openings.stream().limit(12).map(Opening::mark).toList());
  }
}
