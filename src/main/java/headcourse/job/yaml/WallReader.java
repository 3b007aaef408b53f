package headcourse.job.yaml;

import headcourse.job.Above;
import headcourse.job.Backing;
import headcourse.job.Care;
import headcourse.job.Setting;
import headcourse.job.Sheathing;
import headcourse.job.Wall;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code wall:} and {@code setting:}. */
final class WallReader {
  private WallReader() {}

  static Wall wall(Section s) {
    Reading in = s.in;
    Length bed = s.length("bed", Range.NOT_NEGATIVE, in.or(0.5, 12));
    Length scratch = s.length("scratch", Range.NOT_NEGATIVE, in.or(0.5, 12));
    Sheathing sheathing = BackingReader.sheathing(s);
    Length framing = s.length("framing", Range.NOT_NEGATIVE, in.or(3.5, 90));
    boolean plain = s.word("jambs", List.of("returned", "plain"), "returned").equals("plain");
    List<Length> courses = new ArrayList<>();
    for (Item i : s.list("courses")) {
      Length c = i.length(Range.SIGNED);
      if (c != null && !courses.isEmpty() && c.compareTo(courses.get(courses.size() - 1)) <= 0) {
        i.error("courses must rise; expected more than " + in.say(courses.get(courses.size() - 1)));
      } else if (c != null) {
        courses.add(c);
      }
    }
    List<Backing> backing = BackingReader.backing(s);
    Above above = above(s.item("above"));
    s.done();
    return new Wall(
        bed,
        scratch,
        sheathing,
        framing,
        plain ? Wall.Jambs.PLAIN : Wall.Jambs.RETURNED,
        courses,
        above,
        backing);
  }

  /** Nothing, a triangle, or the height of a wall. */
  private static Above above(Item item) {
    String text = item == null ? "nothing" : item.raw("nothing, triangle or a height");
    if (text == null || text.equals("nothing")) {
      return Above.NOTHING;
    }
    if (text.equals("triangle")) {
      return new Above(Above.Kind.TRIANGLE, Length.ZERO);
    }
    if (!text.matches(".*[0-9].*")) {
      item.error(
          Reading.quoted(text)
              + " is not known here; expected nothing, triangle, or how high the wall stands over"
              + " the head");
      return Above.NOTHING;
    }
    Length height = item.length(Range.POSITIVE);
    return height == null ? Above.NOTHING : new Above(Above.Kind.LEVEL, height);
  }

  static Setting setting(Section s) {
    Reading in = s.in;
    boolean mortar = s.word("joints", List.of("dry", "mortar"), "dry").equals("mortar");
    Range width = new Range(Length.ZERO, Length.inches(2), true);
    Length joint = s.length("joint", width, mortar ? in.or(0.375, 10) : Length.ZERO);
    if (mortar) {
      joint = in.grid.snap(joint);
    }
    if (in.sound("setting.joint") && mortar == joint.isZero()) {
      in.error(
          "setting.joint",
          mortar
              ? "a mortar joint has a width; expected more than 0"
              : "a dry joint has no width; expected 0, or joints: mortar");
    }
    Length opens = s.length("opens", Range.of(0, 0.5), mortar ? Length.ZERO : in.or(1 / 64.0, 0.4));
    Length cut = s.length("cut-tolerance", Range.of(0, 0.5), in.or(1 / 32.0, 1));
    Care care = CareReader.read(s, opens);
    s.done();
    return new Setting(
        mortar ? Setting.Joints.MORTAR : Setting.Joints.DRY, joint, opens, cut, care);
  }
}
