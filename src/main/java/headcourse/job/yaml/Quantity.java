package headcourse.job.yaml;

import headcourse.units.NotationException;
import headcourse.units.NumberParser;
import headcourse.units.Units;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Amounts that carry a unit and are no length; read in SI units. */
enum Quantity {
  /** kg. */
  MASS(new Unit("lb", Quantity.LB), new Unit("kg", 1)),
  /** kg/m. */
  MASS_PER_LENGTH(new Unit("lb/ft", Quantity.LB / 0.3048), new Unit("kg/m", 1)),
  /** kg/m². */
  MASS_PER_AREA(new Unit("lb/ft2", Quantity.LB / Quantity.FT2), new Unit("kg/m2", 1)),
  /** m². */
  AREA(
      new Unit("in2", Quantity.FT2 / 144),
      new Unit("m2", 1),
      new Unit("ft2", Quantity.FT2),
      new Unit("cm2", 1e-4),
      new Unit("mm2", 1e-6)),
  /** kg/m³. */
  DENSITY(new Unit("lb/ft3", Quantity.LB / Quantity.FT3), new Unit("kg/m3", 1));

  // International pound and foot, exact by definition (1959).
  private static final double LB = 0.45359237;
  private static final double FT2 = 0.3048 * 0.3048;
  private static final double FT3 = 0.3048 * 0.3048 * 0.3048;

  private record Unit(String word, double si) {}

  private final List<Unit> units;

  /** The first unit is what a bare number is in inch jobs, the second in metric ones. */
  Quantity(Unit... units) {
    this.units = List.of(units);
  }

  /** The amount, or null where it was refused. */
  Double read(Item item, double min, double max) {
    String s = item.raw("an amount");
    if (s == null) {
      return null;
    }
    String t = s.strip().replace('²', '2').replace('³', '3').replace("^", "");
    Unit unit = unit(t, item.in().units);
    String number = unit == null ? t : t.endsWith(unit.word) ? head(t, unit) : t;
    try {
      if (unit == null) {
        throw new NotationException("");
      }
      double v = NumberParser.parse(number) * unit.si;
      if (v >= min && v <= max) {
        return v;
      }
      item.error(
          Reading.quoted(s)
              + " is out of range; expected "
              + say(min, unit)
              + " to "
              + say(max, unit)
              + " "
              + unit.word);
    } catch (NotationException e) {
      item.error(
          Reading.quoted(s)
              + " will not do; expected a number with "
              + units.stream().map(Unit::word).collect(Collectors.joining(" or ")));
    }
    return null;
  }

  private Unit unit(String t, Units job) {
    Unit best = null;
    for (Unit u : units) {
      // "kg/m2" ends with "m2" too: the longest word that ends the text is meant.
      if (t.endsWith(u.word) && (best == null || u.word.length() > best.word.length())) {
        best = u;
      }
    }
    boolean bare = !t.isEmpty() && t.chars().allMatch(c -> "0123456789./ -+".indexOf(c) >= 0);
    return best == null && bare ? units.get(job == Units.INCH ? 0 : 1) : best;
  }

  private static String head(String t, Unit unit) {
    return t.substring(0, t.length() - unit.word.length());
  }

  private static String say(double si, Unit unit) {
    return String.format(Locale.ROOT, "%.0f", si / unit.si);
  }
}
