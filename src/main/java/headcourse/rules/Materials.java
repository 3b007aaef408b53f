package headcourse.rules;

/**
 * What the whole job takes, identical openings counted.
 *
 * @param stones how many stones
 * @param stoneM2 face area, m²
 * @param stoneKg mass, kg
 * @param kgPerM2 mass of veneer and its mortar per area of face, kg/m²
 * @param mortar mortar by what it is for
 * @param bags bags of mortar
 * @param screws how many screws
 * @param screwsByLength how many of each length, as printed
 * @param arrisM running length of arris, m
 */
public record Materials(
    int stones,
    double stoneM2,
    double stoneKg,
    double kgPerM2,
    Mortar mortar,
    int bags,
    int screws,
    java.util.List<ScrewCount> screwsByLength,
    double arrisM) {
  /** Copies the list. */
  public Materials {
    screwsByLength = java.util.List.copyOf(screwsByLength);
  }

  /** Mortar to be mixed, waste counted, m³. */
  public double mortarM3() {
    return mortar.mixed();
  }

  /** So many screws of a length. */
  public record ScrewCount(headcourse.units.Length length, int count) {}
}
