package headcourse.page;

import java.util.LinkedHashMap;
import java.util.Map;

/** The value of a job that a rule is about: what is most often changed when it speaks. */
final class RulePlaces {
  /** Stands for the opening's own path. */
  private static final String OWN = "openings[].";

  private static final Map<String, String> TABLE = new LinkedHashMap<>();

  private RulePlaces() {}

  private static void put(String place, String... rules) {
    for (String rule : rules) {
      TABLE.put(rule, place);
    }
  }

  static {
    put(OWN + "head.bearing.min", "bearing-asked", "bearing-least");
    put(OWN + "head.clear", "joint-at-jamb");
    put(OWN + "wall-left", "wall-beside", "wall-takes-thrust", "movement-joint");
    put(OWN + "head.stones.target", "as-made", "stack-up", "lands", "stacked-joints");
    put(OWN + "head.stones.target", "spare", "waste", "other-width");
    put(OWN + "head.stones.min", "sliver", "leftover");
    put(OWN + "head.stones.max", "no-blank");
    put(OWN + "head.stones.each-side", "odd-with-key");
    put("wall.courses", "four-corners", "course-miss");
    put(OWN + "head.height", "arch-depth", "veneer-face", "veneer-area", "face-least");
    put(OWN + "head.height", "notch-reach", "notch-shows", "lifting", "lifting-reach");
    put(OWN + "head.height", "screw-count", "screw-ends", "screw-edge", "screw-cover");
    put(OWN + "head.key.rise", "key-rise");
    put(OWN + "head.key.bottom", "key-v");
    put(OWN + "head.rise", "segmental-rise");
    put(OWN + "head.camber", "jack-camber");
    put(OWN + "head.shape", "reads-as-hanging", "sharp-arris", "chord-deviation");
    put(OWN + "head.soffit", "soffit-hold");
    put(OWN + "width", "minor-arch", "framing-deflection");
    put(OWN + "reveal", "return-least", "overhead-bond");
    put(OWN + "measured.width.head", "widths-agree");
    put(OWN + "measured.soffit.centre", "bed-wedge");
    put("setting.joint", "joint-width");
    put("setting.joints", "dry-closing");
    put("stone.thickness", "veneer-weight", "adhered-design", "veneer-thickness");
    put("stone.thickness", "thickness-range", "saw-reach", "grinder-reach", "slot-kerf");
    put("wall.sheathing", "scratch-coat", "lath", "bed-least");
    put("wall.backing", "screw-reach", "screw-holds", "screw-kind");
    put("wall.backing", "screw-bending", "screw-withdrawal", "screw-size");
    // Said of the work as a whole.
    put("", "overhead-prop", "scaffold", "silica", "grinder-guard", "carries-nothing");
  }

  /** Whether the table knows a rule. */
  static boolean knows(String rule) {
    return TABLE.containsKey(rule);
  }

  /**
   * The path of the value.
   *
   * @param opening the opening's number, or −1 for the whole job
   * @return the path; empty where it is about no value
   */
  static String of(String rule, int opening) {
    String place = TABLE.getOrDefault(rule, "");
    return place.startsWith(OWN)
        ? opening < 0 ? "" : place.replace("[]", "[" + opening + "]")
        : place;
  }
}
