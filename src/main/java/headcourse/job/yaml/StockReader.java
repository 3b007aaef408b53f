package headcourse.job.yaml;

import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.units.Length;
import headcourse.units.NumberParser;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code stock:}, the yard. */
final class StockReader {
  static final String MARK = "[A-Za-z0-9][A-Za-z0-9_.-]{0,15}";
  static final int MOST = 10_000;

  private StockReader() {}

  static Stock read(Section root, Length thickness, List<Opening> openings) {
    Item item = root.item("stock");
    if (item == null) {
      return Stock.UNSAID;
    }
    Section s = item.section();
    List<Stock.Item> items = new ArrayList<>();
    Length trim = s.length("trim", Range.NOT_NEGATIVE, Length.ZERO);
    for (Item i : s.list("corners")) {
      items.add(blank(i.section(), Stock.Kind.CORNER, false, thickness, trim, List.of()));
    }
    for (Item i : s.list("flats")) {
      items.add(blank(i.section(), Stock.Kind.FLAT, false, thickness, trim, List.of()));
    }
    for (Item i : s.list("order")) {
      Section o = i.section();
      boolean flat = o.has("length") || o.has("height");
      items.add(
          blank(o, flat ? Stock.Kind.FLAT : Stock.Kind.CORNER, true, thickness, trim, openings));
    }
    Item file = s.item("file");
    if (file != null) {
      items.addAll(file(file, thickness, trim));
    }
    double spare = s.get("spare", Stock.UNSAID.spare(), StockReader::spare);
    s.done();
    Map<String, String> taken = new HashMap<>();
    for (Stock.Item i : items) {
      String before = taken.putIfAbsent(i.mark(), i.path());
      if (before != null && !i.mark().isEmpty()) {
        s.in.error(
            i.path() + ".mark",
            "stock mark " + i.mark() + " is taken; expected one for each kind of blank",
            "the first is at " + s.in.place(before + ".mark").place());
      }
    }
    return new Stock(items, spare, trim);
  }

  private static List<Stock.Item> file(Item item, Length thickness, Length trim) {
    String path = item.raw("the path of a CSV file");
    if (path == null) {
      return List.of();
    }
    if (path.isEmpty()
        || path.startsWith("/")
        || path.matches("(?s)[A-Za-z]:.*|.*\\\\.*|.*\0.*")
        || List.of(path.split("/")).contains("..")) {
      item.error(Reading.quoted(path) + " will not do; expected a file beside the job file");
      return List.of();
    }
    var bytes = item.in().files.bytes(path);
    if (bytes.isEmpty()) {
      item.error(
          "there is no file " + Reading.quoted(path) + "; expected a CSV file beside the job");
      return List.of();
    }
    return new StockSheet(item.in(), path, thickness, trim).read(bytes.get());
  }

  private static Stock.Item blank(
      Section s,
      Stock.Kind kind,
      boolean order,
      Length thickness,
      Length trim,
      List<Opening> openings) {
    boolean corner = kind == Stock.Kind.CORNER;
    Length inch = Length.inches(1);
    String mark = s.get("mark", "", StockReader::mark);
    if (!s.has("mark")) {
      s.in.error(s.path, "the blank's mark is missing; expected mark: as C1");
    }
    String length = corner ? "arris" : "length";
    String face = corner ? "face" : "height";
    Length over = order ? s.length("trim", Range.NOT_NEGATIVE, trim) : Length.ZERO;
    // A corner of which only the arris is asked for has the legs that the heads need.
    boolean open =
        order && corner && !s.has("face") && !s.has("return") && CornerLegs.known(openings);
    Stock.Item item =
        new Stock.Item(
            s.path,
            mark,
            kind,
            s.needed(length, Range.POSITIVE, "the blank's " + length, inch),
            open
                ? known(s, "face", CornerLegs.face(openings), over)
                : s.needed(face, Range.POSITIVE, "the blank's " + face, inch),
            open
                ? known(s, "return", CornerLegs.back(openings), over)
                : corner
                    ? s.needed("return", Range.POSITIVE, "the blank's return", inch)
                    : Length.ZERO,
            s.length("thickness", Range.POSITIVE, thickness),
            count(s, mark, order),
            order,
            s.get("price", 0.0, i -> i.number(0, 1e9)),
            over,
            order ? s.get("lead", null, StockReader::days) : null);
    s.done(
        k ->
            k.equals("trim") || k.equals("lead")
                ? k + ": is for what is made to order; expected it under order:"
                : null);
    return item;
  }

  private static Length known(Section s, String key, Length leg, Length over) {
    s.item(key);
    return s.in.grid.ticks(s.in.grid.ceil(leg.plus(over)));
  }

  /** How many lie there; of what is made to order, 0 for as many as needed. */
  private static int count(Section s, String mark, boolean order) {
    if (!order && !s.has("count")) {
      s.in.error(
          s.path,
          "how many of "
              + (mark == null || mark.isEmpty() ? "these" : mark)
              + " lie in the yard is missing; expected count: with a whole number",
          "what the supplier makes as needed stands under order:, without a count");
    }
    return (int) s.whole("count", order ? 1 : 0, MOST, 0);
  }

  /** Days, given as a number, or as weeks. */
  static Integer days(Item item) {
    String s = item.raw("a number of days, as 21 or 3 weeks");
    if (s == null) {
      return null;
    }
    Integer days = days(s);
    if (days == null) {
      item.error(Reading.quoted(s) + " will not do; expected a number of days, as 21 or 3 weeks");
    }
    return days;
  }

  private static Integer days(String s) {
    if (!s.matches("[0-9]{1,4} *(days?|d|weeks?|w)?")) {
      return null;
    }
    int n = Integer.parseInt(s.replaceAll("[^0-9].*", ""));
    return s.contains("w") ? 7 * n : n;
  }

  private static String mark(Item item) {
    String s = item.raw("a mark");
    if (s != null && !s.matches(MARK)) {
      item.error(
          Reading.quoted(s) + " can't be a mark; expected 1 to 16 letters, digits, . - or _");
      return null;
    }
    return s;
  }

  private static Double spare(Item item) {
    String s = item.raw("a share, as 10 %");
    if (s == null) {
      return null;
    }
    boolean percent = s.endsWith("%");
    Double v =
        item.parsed(percent ? s.substring(0, s.length() - 1).strip() : s, NumberParser::parse);
    double share = v == null ? 0 : percent ? v / 100 : v;
    if (share < 0 || share > 1) {
      item.error(Reading.quoted(s) + " is out of range; expected 0 % to 100 %, as 10 %");
      return null;
    }
    return v == null ? null : (Double) share;
  }
}
