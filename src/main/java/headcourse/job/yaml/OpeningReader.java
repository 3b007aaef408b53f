package headcourse.job.yaml;

import headcourse.job.Choosing;
import headcourse.job.Floor;
import headcourse.job.HeadSpec;
import headcourse.job.Measured;
import headcourse.job.Opening;
import headcourse.job.ShapeDef;
import headcourse.job.Vary;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reads {@code openings:}. */
final class OpeningReader {
  private static final String MARK = "[A-Za-z0-9][A-Za-z0-9_-]{0,15}";

  /** Narrower or wider than this is a slip of the pen. */
  private static final Range WIDTH = Range.of(6, 720);

  private static final int MOST = 1000;

  private OpeningReader() {}

  static List<Opening> read(Section root, List<ShapeDef> shapes) {
    List<Opening> openings = new ArrayList<>();
    List<Item> items = root.list("openings");
    if (items.isEmpty() && root.in.sound("openings")) {
      root.in.error("openings", "no opening; expected openings: with at least one, as - width: 8'");
    }
    if (items.size() > MOST) {
      root.in.error("openings", "more than " + MOST + " openings in one job; expected fewer");
      return openings;
    }
    for (Item item : items) {
      Opening o = opening(item, openings.size() + 1, shapes);
      for (Opening before : openings) {
        if (before.mark().equalsIgnoreCase(o.mark()) && item.in().sound(o.path() + ".mark")) {
          item.in()
              .error(
                  o.path() + ".mark",
                  "mark " + o.mark() + " is taken; expected one that no other opening has",
                  "the first is in line " + item.in().place(before.path() + ".mark").line());
        }
      }
      openings.add(o);
    }
    return openings;
  }

  static Opening opening(Item item, int number, List<ShapeDef> shapes) {
    Reading in = item.in();
    Section s = item.section();
    String mark = s.get("mark", "D" + number, OpeningReader::mark);
    String label = s.text("label");
    int count = (int) s.whole("count", 1, 1000, 1);
    List<Length> at = places(s, count);
    Length level = s.length("level", Range.SIGNED, null);
    Measured measured = MeasuredReader.read(s);
    Length width = s.length("width", WIDTH, null);
    if (width == null && !s.has("width")) {
      // What was measured takes its place; the head is set out on the narrowest.
      width = MeasuredReader.narrowest(measured);
      if (width == null && in.sound(s.path) && !s.misspelt("width")) {
        in.error(s.path, "the opening's width is missing; expected width: with a length");
      }
    }
    width = width == null ? Length.inches(96) : width;
    Length height = s.length("height", Range.POSITIVE, null);
    Length reveal = s.length("reveal", Range.POSITIVE.cut(), in.grid.snap(in.or(4, 100)));
    Length sill = s.length("sill", Range.NOT_NEGATIVE, null);
    Length ground = s.length("ground", Range.SIGNED, null);
    Length left = s.length("wall-left", Range.NOT_NEGATIVE, null);
    Length right = s.length("wall-right", Range.NOT_NEGATIVE, null);
    HeadSpec head = HeadReader.read(s.section("head"), mark, shapes);
    Choosing choosing = choosing(s, shapes);
    s.done();
    return new Opening(
        s.path,
        mark,
        label,
        count,
        at,
        level,
        width,
        height,
        reveal,
        left,
        right,
        measured,
        head,
        new Floor(sill, ground),
        choosing);
  }

  private static Choosing choosing(Section s, List<ShapeDef> shapes) {
    Vary vary = VaryReader.read(s.section("vary"), shapes);
    String letter = s.get("choose", "", OpeningReader::letter);
    Item item = s.item("chosen");
    // Its values were laid over the head and are read there.
    boolean settings = item != null && !item.section().keys().isEmpty();
    if (item != null && !s.has("choose")) {
      item.error(
          "settings of a choice, and no letter beside them; expected choose: with its letter");
    }
    return new Choosing(vary, letter, settings);
  }

  private static String letter(Item item) {
    String raw = item.raw("a letter");
    if (raw == null || raw.matches("[A-Za-z]{1,2}")) {
      return raw == null ? null : raw.toUpperCase(Locale.ROOT);
    }
    item.error(
        Reading.quoted(raw)
            + " is no choice; expected a letter as headcourse choose prints it, as B");
    return null;
  }

  /** Where it stands along the wall: one place, or one for each of several that are identical. */
  private static List<Length> places(Section s, int count) {
    Item item = s.item("at");
    if (item == null) {
      return List.of();
    }
    List<Length> places = new ArrayList<>();
    for (Item i : item.isList() ? item.list() : List.of(item)) {
      Length at = i.length(Range.ALONG);
      if (at != null) {
        places.add(at);
      }
    }
    if (item.in().sound(s.at("count")) && (item.isList() ? item.list().size() : 1) != count) {
      item.error(
          count == 1
              ? "more than one place for one opening; expected one length, or count: with how many"
              : "count is " + count + "; expected as many places, as at: [4', 9' 6\", ...]");
    }
    return places;
  }

  private static String mark(Item item) {
    String s = item.raw("a mark");
    if (s != null && s.matches(MARK)) {
      return s;
    }
    if (s != null) {
      item.error(
          Reading.quoted(s)
              + " can't be a mark, because files are named by it; expected 1 to 16 letters, digits,"
              + " - or _, beginning with a letter or digit");
    }
    return null;
  }
}
