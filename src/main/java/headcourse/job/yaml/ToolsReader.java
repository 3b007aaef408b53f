package headcourse.job.yaml;

import headcourse.job.AnchorKind;
import headcourse.job.Fastener;
import headcourse.job.Tools;
import headcourse.units.Angle;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code tools:} and {@code fastener:}. */
final class ToolsReader {
  private ToolsReader() {}

  static Tools tools(Section s) {
    Reading in = s.in;
    Section saw = s.section("saw");
    Length kerf = saw.length("kerf", Range.of(0.02, 1), in.or(0.125, 3));
    Length depth = saw.length("depth-of-cut", Range.POSITIVE, in.or(4, 100));
    Angle tilts = saw.angle("tilts-to", Angle.degrees(45));
    if (tilts.radians() < 0 || tilts.degrees() > 90) {
      in.error(saw.at("tilts-to"), "a saw can't tilt so; expected 0° to 90°");
    }
    Length clean = saw.length("clean-cut", Range.NOT_NEGATIVE, in.or(0.125, 3));
    saw.done();
    Section grinder = s.section("grinder");
    Length blade = grinder.length("blade", Range.of(1, 24), in.or(4.5, 115));
    // As wide as a blade for raking out joints: it lets a number 10 screw through.
    Length slot = grinder.length("kerf", Range.of(0.02, 1), in.or(0.25, 6));
    grinder.done();
    s.done();
    return new Tools(new Tools.Saw(kerf, depth, tilts, clean), new Tools.Grinder(blade, slot));
  }

  static Fastener fastener(Section s, Length thickness) {
    Reading in = s.in;
    List<Length> lengths = new ArrayList<>();
    for (Item i : s.list("lengths")) {
      Length l = i.length(Range.POSITIVE);
      if (l != null) {
        lengths.add(l);
      }
    }
    if (s.has("lengths") && lengths.isEmpty() && in.sound("fastener.lengths")) {
      in.error("fastener.lengths", "no lengths; expected at least one, as [2, 2 1/2, 3]");
    }
    if (lengths.isEmpty()) {
      for (double d : new double[] {2, 2.5, 3, 3.5, 4, 4.5, 5}) {
        lengths.add(in.or(d, d * 25 - (d * 25) % 5));
      }
    }
    lengths.sort(null);
    Length shank = s.length("shank", Range.of(0.05, 1), in.or(0.1875, 5));
    Length head = s.length("head", Range.of(0.05, 2), in.or(0.375, 10));
    if (in.sound("fastener.shank", "fastener.head") && head.compareTo(shank) < 0) {
      in.error(
          "fastener.head",
          "a head narrower than its shank; expected " + in.say(shank) + " or more");
    }
    Length embedment = s.length("embedment", Range.POSITIVE, in.or(1, 25));
    // Common practice: a third of the thickness, and never less than 3/8 in (10 mm).
    Length third = new Length(thickness.picometres() / 3);
    Length least = in.units == Units.INCH ? Length.inches(0.375) : Length.mm(10);
    Length cover = s.length("cover", Range.POSITIVE, third.max(least));
    List<AnchorKind> kinds = kinds(s);
    s.done();
    return new Fastener(kinds, lengths, shank, head, embedment, cover);
  }

  /** One kind, or a list of them. */
  private static List<AnchorKind> kinds(Section s) {
    Item item = s.item("kind");
    List<AnchorKind> kinds = new ArrayList<>();
    for (Item i : item == null ? List.<Item>of() : item.isList() ? item.list() : List.of(item)) {
      String word = i.word(AnchorKind.words());
      if (word != null) {
        kinds.add(AnchorKind.of(word));
      }
    }
    return kinds.isEmpty() ? List.of(AnchorKind.WOOD_SCREW) : kinds;
  }
}
