package headcourse.job.yaml;

import headcourse.job.CutStone;
import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Opening;
import headcourse.job.Stock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads what broke and what is good: {@code spoiled:} and {@code cut:}. */
final class ReportReader {
  private static final String STONE = "K|[LR][1-9][0-9]{0,2}";

  private final List<Opening> openings;
  private final Pieces pieces;
  private final List<Fitted> fitted;
  private final Set<String> measured = new LinkedHashSet<>();

  ReportReader(List<Opening> openings, Stock stock, List<Fitted> fitted) {
    this.openings = openings;
    this.pieces = new Pieces(stock);
    this.fitted = fitted;
    fitted.forEach(f -> measured.add(f.opening() + "-" + f.stone()));
  }

  /** The stones that are good as ticketed; those with a size of their own join the fitted ones. */
  List<CutStone> cut(Section root, List<Fitted> sized) {
    List<CutStone> all = new ArrayList<>();
    Item given = root.item("cut");
    if (given == null) {
      return all;
    }
    if (given.isMap()) {
      // As under fitted: by opening.
      Section s = given.section();
      for (String mark : s.keys()) {
        Opening o = opening(mark);
        if (o == null) {
          continue;
        }
        Item of = s.item(mark);
        if (of.isMap()) {
          for (String stone : of.section().keys()) {
            of.error(
                "sizes stand under fitted:; expected "
                    + mark
                    + ": ["
                    + stone
                    + "] here, or "
                    + "fitted: {"
                    + mark
                    + ": {"
                    + stone
                    + ": its width}}");
          }
          continue;
        }
        for (Item i : of.list()) {
          String stone = i.raw("a stone's mark, as R4");
          if (stone != null && stone.matches(STONE)) {
            add(all, i, mark + "-" + stone, "");
          } else if (stone != null) {
            i.error(Reading.quoted(stone) + " is no stone's mark; expected K, L1, ... or R1, ...");
          }
        }
      }
      s.done(k -> "no opening has the mark " + Reading.quoted(k) + "; expected " + marks());
      return all;
    }
    for (Item i : given.list()) {
      if (i.isMap()) {
        withMore(all, i, sized);
        continue;
      }
      String s = i.raw("a stone with its opening, as D1-R4");
      if (s != null && s.contains("#")) {
        i.error(
            Reading.quoted(s)
                + " is a blank; expected the stones that were cut from it, as "
                + example("R4"));
      } else if (s != null && isStone(i, s)) {
        add(all, i, s, "");
      }
    }
    return all;
  }

  private void withMore(List<CutStone> all, Item i, List<Fitted> sized) {
    Section s = i.section();
    Item item = s.item("stone");
    String mark = item == null ? null : item.raw("a stone with its opening, as D1-R4");
    if (item == null) {
      i.error("the stone is missing; expected stone: with its opening, as " + example("R4"));
    }
    Item from = s.item("piece");
    String piece = from == null ? null : from.raw("a blank with its number, as C2#3");
    piece = piece == null || !pieces.lies(from, piece) ? "" : piece;
    boolean size = s.has("width") || s.has("bottom");
    var bottom = s.length(s.has("bottom") ? "bottom" : "width", Range.POSITIVE, null);
    var top = s.length("top", Range.POSITIVE, null);
    var height = s.length("height", Range.POSITIVE, null);
    s.done();
    if (mark == null || !isStone(item, mark)) {
      return;
    }
    if (!size && (top != null || height != null)) {
      i.error("the width at the bottom is missing; expected bottom: with a length");
    } else if (size && add(new ArrayList<>(), i, mark, piece) && bottom != null) {
      int at = mark.lastIndexOf('-');
      String opening = mark.substring(0, at);
      sized.add(new Fitted(i.path(), opening, mark.substring(at + 1), bottom, top, height, piece));
      measured.add(mark);
    } else if (!size) {
      add(all, i, mark, piece);
    }
  }

  private boolean add(List<CutStone> all, Item i, String mark, String piece) {
    int at = mark.lastIndexOf('-');
    Opening o = opening(mark.substring(0, at));
    long before = all.stream().filter(c -> c.mark().equals(mark)).count();
    if (measured.contains(mark)) {
      i.error(mark + " stands under fitted: too, with its size; keep that and leave it out here");
      return false;
    }
    if (before >= o.count()) {
      i.error(
          o.count() == 1
              ? mark + " stands here a second time; keep one"
              : mark
                  + " stands here more than "
                  + o.count()
                  + " times, but there are no more "
                  + o.mark());
      return false;
    }
    all.add(new CutStone(i.path(), o.mark(), mark.substring(at + 1), piece));
    return true;
  }

  /** What broke: blanks, off-cuts and stones. */
  List<String> spoiled(Section root) {
    List<String> all = new ArrayList<>();
    Item given = root.item("spoiled");
    if (given == null) {
      return all;
    }
    if (given.isMap()) {
      given.error(
          "expected a list of stones and blanks, as spoiled: [" + example("R5") + ", C2#3]");
      return all;
    }
    for (Item i : given.list()) {
      String s = i.raw("a stone with its opening, as D1-R5, or a blank with its number, as C2#3");
      if (s == null) {
        continue;
      }
      if (!s.contains("#")) {
        // The same stone may break twice.
        if (isStone(i, s)) {
          all.add(s);
        }
        continue;
      }
      if (!pieces.lies(i, s)) {
        continue;
      }
      if (all.contains(s)) {
        i.error(s + " stands here a second time; keep one");
        continue;
      }
      all.add(s);
      for (Fitted f : fitted) {
        if (f.piece().equals(s) && oneByOne(opening(f.opening()))) {
          i.error(f.stone() + " of " + f.opening() + " was cut from " + s + "; it can't be both");
        }
      }
    }
    return all;
  }

  /** Whether each of an opening's stones takes a piece of its own. */
  static boolean oneByOne(Opening o) {
    return o.head().stones().rhythm() == HeadSpec.Rhythm.FROM_STOCK;
  }

  private boolean isStone(Item i, String s) {
    int at = s.lastIndexOf('-');
    if (at > 0 && s.substring(at + 1).matches(STONE)) {
      if (opening(s.substring(0, at)) != null) {
        return true;
      }
      i.error(
          "no opening has the mark "
              + Reading.quoted(s.substring(0, at))
              + "; expected "
              + marks()
              + " before the stone's");
    } else if (s.matches(STONE)) {
      i.error(
          Reading.quoted(s)
              + " does not say of which opening; expected it before, as "
              + example(s));
    } else if (pieces.kind(s)) {
      i.error(Reading.quoted(s) + " names no one blank; expected its number too, as " + s + "#1");
    } else {
      i.error(
          Reading.quoted(s)
              + " names neither a stone nor a blank; expected a stone with its opening, as "
              + example("R5")
              + ", or a blank with its number, as C2#3");
    }
    return false;
  }

  private String example(String stone) {
    return (openings.isEmpty() ? "D1" : openings.get(0).mark()) + "-" + stone;
  }

  private Opening opening(String mark) {
    return openings.stream().filter(o -> o.mark().equals(mark)).findFirst().orElse(null);
  }

  private String marks() {
    return String.join(", ", openings.stream().limit(12).map(Opening::mark).toList());
  }
}
