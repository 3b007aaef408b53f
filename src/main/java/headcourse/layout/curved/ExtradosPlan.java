package headcourse.layout.curved;

import headcourse.units.Length;
import java.util.List;

/**
 * What a head's stones are to run up to, before they are divided.
 *
 * @param word concentric, level or stepped
 * @param ring a ring of the head's depth
 * @param level height of a level top above the springing line
 * @param plumb distance of plumb ends from the centre line
 * @param courses where the wall's bed joints lie
 */
record ExtradosPlan(
    String word, ConcentricExtrados ring, double level, double plumb, Courses courses) {
  static final String CONCENTRIC = "concentric";

  /** Nearest a joint runs to a corner, as a part of the depth. Common practice, no source. */
  private static final double SLIVER = 0.2;

  /** Reads it from the job. */
  static ExtradosPlan of(CurvedSpec given, Intrados intrados) throws NoHead {
    double depth = given.head().height().mm();
    if (!(depth > 0)) {
      throw given.refuse("height", "a curved head has a depth");
    }
    String word = given.word("extrados", CONCENTRIC);
    Double top = given.length("top");
    Double shoulder = given.length("shoulder");
    for (String key : List.of("top", "shoulder")) {
      Double value = given.length(key);
      if (value != null && value < given.tick()) {
        throw given.refuse(key, key + " is more than nothing", given.near(key, depth, "the depth"));
      }
    }
    double crown = intrados.at(0).y();
    double plumb = given.halfSpan() + (shoulder == null ? depth : shoulder);
    Courses courses = word.equals("stepped") ? courses(given) : null;
    return new ExtradosPlan(
        word,
        new ConcentricExtrados(intrados, depth, 0),
        crown + (top == null ? depth : top),
        plumb,
        courses);
  }

  private static Courses courses(CurvedSpec given) throws NoHead {
    List<Double> beds = given.job().wall().courses().stream().map(Length::mm).toList();
    Double height = given.length("course");
    if (beds.isEmpty() && height == null) {
      throw given.refuse(
          "extrados",
          "a stepped head needs the wall's courses",
          given.near("course", given.head().height().mm(), "courses as high as the head is deep"),
          given.change("extrados", CONCENTRIC, "a ring of one depth"));
    }
    if (height != null && height < given.tick()) {
      throw given.refuse(
          "course",
          "a course is higher than nothing",
          given.near("course", 200, "a common height"));
    }
    return new Courses(beds, height == null ? 0 : height);
  }

  /** What the key's upper width is measured on, or null where that depends on the division. */
  Extrados forKey() {
    return switch (word) {
      case "stepped" -> null;
      case "level" -> new LevelExtrados(level, plumb, CutLine.CENTRE);
      default -> ring;
    };
  }

  /**
   * The extrados over a division. Where the job leaves the shoulder open, the plumb ends move out,
   * by half the depth at most, until no joint runs near a corner and leaves a sliver.
   */
  Extrados over(CurvedSpec given, Division division) {
    if (word.equals(CONCENTRIC)) {
      return ring;
    }
    Extrados first = over(division, plumb);
    if (given.length("shoulder") != null) {
      return first;
    }
    double step = given.tick() * Math.max(1, Math.round(ring.depth() / 64 / given.tick()));
    double room = Math.min(plumb + ring.depth() / 2, given.halfSpan() + given.wall());
    for (double x = plumb; x <= room + 1e-9; x += step) {
      Extrados e = over(division, x);
      if (e.sliver(division.lines()) >= ring.depth() * SLIVER) {
        if (x > plumb) {
          given.remark(
              "shoulder",
              "the plumb ends stand "
                  + given.say(x - given.halfSpan())
                  + " past the jambs, so that no joint runs into a corner",
              List.of(given.say(x - given.halfSpan())));
        }
        return e;
      }
    }
    return first;
  }

  private Extrados over(Division division, double x) {
    return word.equals("level")
        ? new LevelExtrados(level, x, division.lines().get(division.each()))
        : SteppedExtrados.over(ring, division, courses::atOrAbove, x);
  }
}
