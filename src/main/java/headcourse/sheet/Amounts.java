package headcourse.sheet;

import headcourse.units.Decimals;
import headcourse.units.Limit;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;

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

  /** A mass to a tenth, whatever it is, so that sums add up: {@code 298.1 lb}, {@code 135.2 kg}. */
  public String massInTenths(double kg) {
    return Decimals.fixed(inMassUnits(kg), 1) + massUnit();
  }

  /**
   * What masses add up to as each is printed in tenths.
   *
   * @param kg the masses
   * @param times how often each counts
   */
  public String massTogether(List<Double> kg, List<Integer> times) {
    long tenths = 0;
    for (int i = 0; i < kg.size(); i++) {
      tenths += times.get(i) * Math.round(inMassUnits(kg.get(i)) * 10);
    }
    return Decimals.fixed(tenths / 10.0, 1) + massUnit();
  }

  private double inMassUnits(double kg) {
    return imperial() ? kg / KG_PER_LB : kg;
  }

  private String massUnit() {
    return imperial() ? " lb" : " kg";
  }

  /** The most that something weighs, a whole number: {@code 103 lb}, {@code 47 kg}. */
  public String massAtMost(double kg) {
    return Limit.LEAST.decimal(inMassUnits(kg), 0).toPlainString() + massUnit();
  }

  /** Mass along a length: {@code 35.1 lb/ft}, {@code 52.2 kg/m}. */
  public String massPerLength(double kgPerM) {
    return imperial()
        ? Decimals.fixed(kgPerM / KG_PER_LB * M_PER_FT, 1) + " lb/ft"
        : Decimals.fixed(kgPerM, 1) + " kg/m";
  }

  /** A volume: {@code 1.73 ft³}, {@code 37.2 l}. */
  public String volume(double m3) {
    return volume(Math.round(inSteps(m3)));
  }

  /** Volumes that add up as they are printed to what {@link #volume} prints of their sum. */
  public List<String> volumes(double... m3) {
    List<String> parts = new ArrayList<>();
    double sum = 0;
    long before = 0;
    for (double part : m3) {
      sum += part;
      long now = Math.round(inSteps(sum));
      parts.add(volume(now - before));
      before = now;
    }
    return parts;
  }

  /** Hundredths of a cubic foot, or tenths of a litre. */
  private double inSteps(double m3) {
    return imperial() ? m3 / Math.pow(M_PER_FT, 3) * 100 : m3 * 10_000;
  }

  private String volume(long steps) {
    return imperial()
        ? Decimals.fixed(steps / 100.0, 2) + " ft³"
        : Decimals.fixed(steps / 10.0, 1) + " l";
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
