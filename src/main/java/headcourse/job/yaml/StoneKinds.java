package headcourse.job.yaml;

import java.util.List;
import java.util.Optional;

/**
 * Densities of the kinds of stone, kg/m³. Typical values lie at or above the least that the ASTM
 * standards ask for (C615 granite 2560, C503 marble 2590, C568 limestone 1760, 2160 and 2560, C616
 * sandstone 2000, quartzitic 2400, quartzite 2560; seen in a reprinted industry table). Typical and
 * heaviest values are from memory of general engineering tables; bluestone and basalt likewise.
 *
 * <p>Friction of sawn or split stone on stone, dry or on mortar that has set, from memory of
 * general engineering tables (masonry on masonry 0.6 to 0.75); the lower value is taken, less where
 * a kind saws or splits smooth.
 */
final class StoneKinds {
  private StoneKinds() {}

  /**
   * A kind of stone.
   *
   * @param name its word
   * @param typical kg/m³ for masses
   * @param heaviest kg/m³ that a stone of this kind can plausibly reach, for lifting
   * @param friction coefficient of friction of its joints
   */
  record Kind(String name, double typical, double heaviest, double friction) {}

  private static final List<Kind> ALL =
      List.of(
          new Kind("granite", 2650, 2800, 0.6),
          new Kind("marble", 2690, 2850, 0.55),
          new Kind("limestone", 2300, 2700, 0.65),
          new Kind("sandstone", 2250, 2600, 0.65),
          new Kind("quartzitic-sandstone", 2450, 2650, 0.6),
          new Kind("quartzite", 2640, 2750, 0.55),
          new Kind("bluestone", 2640, 2750, 0.6),
          new Kind("slate", 2750, 2900, 0.5),
          new Kind("basalt", 2800, 3000, 0.6));

  static List<String> names() {
    return ALL.stream().map(Kind::name).toList();
  }

  static Optional<Kind> named(String name) {
    return ALL.stream().filter(k -> k.name().equals(name)).findFirst();
  }
}
