package headcourse.sheet;

import headcourse.units.Decimals;
import headcourse.units.Units;

/**
 * Writes masses, areas and volumes in a job's own units.
 *
 * @param units inches go with pounds and feet, millimetres with kilograms and metres
 */
public record Amounts(Units units) {
  private static final double KG_PER_LB = 0.45359237;
  private static final double M_PER_FT = 0.3048;

  private boolean imperial() {
    return units == Units.INCH;
  }

  /** A mass to a tenth, or whole from a hundred up: {@code 14.1 lb}, {@code 6.4 kg}. */
  public String mass(double kg) {
    return imperial() ? number(kg / KG_PER_LB) + " lb" : number(kg) + " kg";
  }

  /** A mass without decimals: {@code 50 lb}, {@code 20 kg}. */
  public String wholeMass(double kg) {
    return imperial() ? Decimals.fixed(kg / KG_PER_LB, 0) + " lb" : Decimals.fixed(kg, 0) + " kg";
  }

  /** An area: {@code 16.0 ft²}, {@code 1.49 m²}. */
  public String area(double m2) {
    return imperial() ? number(m2 / (M_PER_FT * M_PER_FT)) + " ft²" : Decimals.fixed(m2, 2) + " m²";
  }

  /** Mass per area: {@code 14.6 lb/ft²}, {@code 71.3 kg/m²}. */
  public String massPerArea(double kgPerM2) {
    return imperial()
        ? number(kgPerM2 / KG_PER_LB * M_PER_FT * M_PER_FT) + " lb/ft²"
        : number(kgPerM2) + " kg/m²";
  }

  /** A density: {@code 145 lb/ft³}, {@code 2320 kg/m³}. */
  public String density(double kgPerM3) {
    return imperial()
        ? number(kgPerM3 / KG_PER_LB * Math.pow(M_PER_FT, 3)) + " lb/ft³"
        : number(kgPerM3) + " kg/m³";
  }

  /** A volume: {@code 1.3 ft³}, {@code 37 l}. */
  public String volume(double m3) {
    return imperial() ? number(m3 / Math.pow(M_PER_FT, 3)) + " ft³" : number(m3 * 1000) + " l";
  }

  /** What one stone takes of mortar, to the cubic inch or the tenth of a litre. */
  public String trowel(double m3) {
    return imperial()
        ? Decimals.fixed(m3 / Math.pow(M_PER_FT / 12, 3), 0) + " in³"
        : Decimals.fixed(m3 * 1000, 1) + " l";
  }

  /** A running length of stone: {@code 22.4 ft}, {@code 6.83 m}. */
  public String run(double m) {
    return imperial() ? number(m / M_PER_FT) + " ft" : Decimals.fixed(m, 2) + " m";
  }

  private static String number(double value) {
    return Decimals.fixed(value, Math.abs(value) >= 99.95 ? 0 : 1);
  }
}
