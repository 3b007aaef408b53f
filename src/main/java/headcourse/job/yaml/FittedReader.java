package headcourse.job.yaml;

import headcourse.job.Accepted;
import headcourse.job.Fitted;
import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads what the work itself reports: {@code fitted:} and {@code accept:}. */
final class FittedReader {
  private FittedReader() {}

  static List<Fitted> fitted(Section s, List<Opening> openings, Stock stock) {
    List<Fitted> all = new ArrayList<>();
    Set<String> pieces = new LinkedHashSet<>();
    Pieces blanks = new Pieces(stock);
    for (Opening o : openings) {
      if (!s.has(o.mark())) {
        continue;
      }
      Section stones = s.section(o.mark());
      for (String stone : stones.keys()) {
        if (stone.matches("K|[LR][1-9][0-9]{0,2}")) {
          // Where stones are set from the yard's pieces, each takes one of its own.
          Set<String> own = ReportReader.oneByOne(o) ? pieces : new LinkedHashSet<>();
          all.add(stone(stones.item(stone), o.mark(), stone, blanks, own));
        }
      }
      stones.done(
          k -> Reading.quoted(k) + " is no stone's mark; expected K, L1, L2, ... or R1, R2, ...");
    }
    s.done(
        k ->
            "no opening has the mark "
                + Reading.quoted(k)
                + "; expected "
                + marks(openings)
                + (k.matches(".+-(K|[LR][1-9][0-9]{0,2})")
                    ? ", with the stone below it, as "
                        + k.substring(0, k.lastIndexOf('-'))
                        + ": {"
                        + k.substring(k.lastIndexOf('-') + 1)
                        + ": 7}"
                    : ""));
    return all;
  }

  private static Fitted stone(
      Item item, String opening, String mark, Pieces blanks, Set<String> pieces) {
    if (!item.isMap() && !item.isList() && item.raw("a length").isEmpty()) {
      item.error(
          mark
              + " has no size; expected its width, or where it was cut as ticketed cut: ["
              + opening
              + "-"
              + mark
              + "]");
      return new Fitted(item.path(), opening, mark, Length.inches(1), null, null);
    }
    if (!item.isMap()) {
      Length width = item.length(Range.POSITIVE);
      return new Fitted(item.path(), opening, mark, width, null, null);
    }
    Section s = item.section();
    // A stone of one width may say so in one word.
    boolean one = s.has("width") && !s.has("bottom");
    Length bottom =
        s.needed(
            one ? "width" : "bottom", Range.POSITIVE, "the width at the bottom", Length.inches(1));
    Fitted f =
        new Fitted(
            item.path(),
            opening,
            mark,
            bottom,
            s.length("top", Range.POSITIVE, null),
            s.length("height", Range.POSITIVE, null),
            piece(s.item("piece"), blanks, pieces));
    s.done(
        k ->
            k.equals("width")
                ? "bottom: is given too, and is the same; expected one of them"
                : null);
    return f;
  }

  /** The piece that a stone was cut from, empty where that is not said. */
  private static String piece(Item i, Pieces blanks, Set<String> pieces) {
    String s = i == null ? null : i.raw("a blank with its number, as C2#3, or none");
    if (s == null || s.equals(Fitted.NO_PIECE)) {
      return s == null ? "" : s;
    }
    if (!blanks.lies(i, s)) {
      return "";
    }
    if (!pieces.add(s)) {
      i.error("another stone was cut from " + s + "; expected one stone of each piece");
    }
    return s;
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
