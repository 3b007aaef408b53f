package headcourse.job.yaml;

import headcourse.job.Measured;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Reads {@code measured:}, an opening as built. */
final class MeasuredReader {
  private static final Range WIDTH = Range.of(6, 720);
  private static final Range OFF = Range.of(-24, 24);

  private MeasuredReader() {}

  /** What was measured, or null. */
  static Measured read(Section opening) {
    Item item = opening.item("measured");
    if (item == null) {
      return null;
    }
    Section s = item.section();
    Length head = null;
    Length middle = null;
    Length sill = null;
    Item width = s.item("width");
    if (width != null && width.isMap()) {
      Section w = width.section();
      head = w.length("head", WIDTH, null);
      middle = w.length("middle", WIDTH, null);
      sill = w.length("sill", WIDTH, null);
      w.done();
    } else if (width != null) {
      head = width.length(WIDTH);
    }
    Section plumb = s.section("plumb");
    Length left = plumb.length("left", OFF, null);
    Length right = plumb.length("right", OFF, null);
    plumb.done();
    Length centre = s.length("centre-off", OFF, null);
    boolean known = head != null || middle == null && sill == null;
    Item soffit = s.item("soffit");
    if (soffit != null && !soffit.isList() && !known) {
      soffit.error(
          "left and right stand at the jambs, but the width at the head was not measured; expected"
              + " width: {head: ...}, or a list of levels with at: and up:");
    }
    Length lean = orZero(left).minus(orZero(right)).half().plus(orZero(centre));
    List<Measured.Level> levels = levels(soffit, head, lean, opening);
    s.done();
    return new Measured(head, middle, sill, levels, left, right, centre);
  }

  /** The narrowest width that was measured, or null. */
  static Length narrowest(Measured m) {
    return m == null
        ? null
        : Stream.of(m.widthHead(), m.widthMiddle(), m.widthSill())
            .filter(Objects::nonNull)
            .min(Comparator.naturalOrder())
            .orElse(null);
  }

  /**
   * The levels; {@code off} is how far the centre line lies right of the middle at the soffit, so
   * that what is measured at the jambs lies as much to the left of where it would.
   */
  private static List<Measured.Level> levels(Item item, Length head, Length off, Section opening) {
    List<Measured.Level> levels = new ArrayList<>();
    if (item == null) {
      return levels;
    }
    if (item.isList()) {
      for (Item i : item.list()) {
        Section l = i.section();
        Length at = l.needed("at", Range.SIGNED, "the place along the head", Length.ZERO);
        Length up = l.needed("up", OFF, "the level", Length.ZERO);
        levels.add(new Measured.Level(at, up));
        l.done();
      }
      levels.sort(Comparator.comparing(Measured.Level::at));
      return levels;
    }
    Length span = head;
    if (span == null && opening.has("width")) {
      span = quietWidth(opening);
    }
    Length half = span == null ? Length.ZERO : span.half();
    Section s = item.section();
    add(levels, half.plus(off).negated(), s.length("left", OFF, null));
    add(levels, Length.ZERO, s.length("centre", OFF, null));
    add(levels, half.minus(off), s.length("right", OFF, null));
    s.done();
    levels.sort(Comparator.comparing(Measured.Level::at));
    return levels;
  }

  private static Length orZero(Length length) {
    return length == null ? Length.ZERO : length;
  }

  // The width itself is read, and refused, once by the opening's reader.
  private static Length quietWidth(Section opening) {
    String raw = opening.scalar("width");
    return raw == null ? null : Lengths.read(raw, WIDTH, opening.in, (message, hints) -> {});
  }

  private static void add(List<Measured.Level> levels, Length at, Length up) {
    if (up != null) {
      levels.add(new Measured.Level(at, up));
    }
  }
}
