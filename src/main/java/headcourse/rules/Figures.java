package headcourse.rules;

import headcourse.job.Job;
import headcourse.text.Words;
import headcourse.units.Angle;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import headcourse.units.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes the figures of messages in the job's units, in plain characters. */
final class Figures {
  /** Kilograms in a pound (international avoirdupois, exact). */
  static final double KG_PER_LB = 0.45359237;

  /** Square metres in a square foot, exact. */
  static final double M2_PER_FT2 = 0.09290304;

  /** Square metres in a square inch, exact. */
  static final double M2_PER_IN2 = 0.00064516;

  /** Cubic metres in a cubic foot, exact. */
  static final double M3_PER_FT3 = 0.028316846592;

  private final Units units;
  private final LengthFormat format;
  private final Grid grid;
  private final Words words;

  private Figures(Units units, Grid grid, Grid fine, Words words) {
    this.words = words;
    this.units = units;
    this.format = new LengthFormat(units, fine);
    this.grid = grid;
  }

  /** Figures for a job: lengths to its grid, or finer where the grid is coarse. */
  static Figures of(Job job, Words words) {
    Length fine = job.units() == Units.INCH ? Length.inches(1 / 32.0) : Length.mm(0.5);
    return new Figures(job.units(), job.grid(), new Grid(job.grid().tick().min(fine)), words);
  }

  /** {@code 7 1/2"}, {@code 190 mm}. */
  String length(Length length) {
    return format.plainWithUnit(length);
  }

  /** The step that lengths are said to. */
  Grid step() {
    return format.grid();
  }

  /** What must not be passed; never rounded up. */
  String most(Length limit) {
    return Limit.MOST.plainWithUnit(format, limit);
  }

  /** The same to the job's own grid, as it is to be measured. */
  String mostOnGrid(Length limit) {
    return Limit.MOST.plainWithUnit(new LengthFormat(units, grid), limit);
  }

  /** What no tape shows, as a limit: {@code 0.3 in}, {@code 7.6 mm}. */
  String thin(Limit limit, Length length) {
    return units == Units.INCH
        ? plain(limit.decimal(length.inches(), 2)) + " in"
        : plain(limit.decimal(length.mm(), 1)) + " mm";
  }

  /** What no tape shows, to the nearest: {@code 0.13 in}, {@code 3.3 mm}. */
  String thinNear(Length length) {
    return units == Units.INCH
        ? decimal(length.inches(), 2) + " in"
        : decimal(length.mm(), 1) + " mm";
  }

  /** What must be reached; never rounded down. */
  String least(Length limit) {
    return Limit.LEAST.plainWithUnit(format, limit);
  }

  /** {@code 16'-0"} from a foot up, {@code 4877 mm}. */
  String span(Length length) {
    return span(length, length(length));
  }

  /** A span that must not be passed. */
  String spanMost(Length limit) {
    return span(Limit.MOST.on(format.grid(), limit), most(limit));
  }

  private String span(Length length, String under) {
    Length foot = Length.inches(12);
    if (units != Units.INCH || length.compareTo(foot) < 0) {
      return under;
    }
    Length rounded = format.grid().snap(length);
    long feet = rounded.picometres() / foot.picometres();
    Length rest = rounded.minus(foot.times(feet));
    String nought = rest.isZero() || rest.compareTo(Length.inches(1)) >= 0 ? "" : "0 ";
    return feet + "'-" + nought + format.plain(rest) + "\"";
  }

  /**
   * The first length, rounded away from the limit that it breaks; with a word where it is too near
   * to it for that.
   */
  String length(Length value, Length limit) {
    String text = length(value);
    int side = value.compareTo(limit);
    if (side == 0) {
      return text;
    }
    return !text.equals(length(limit))
        ? (side > 0 ? least(value) : most(value))
        : words.say(side > 0 ? "rule.just-over" : "rule.just-under", text);
  }

  /** {@code 55.3 lb}, {@code 25.1 kg}. */
  String mass(double kg) {
    return decimal(inMassUnits(kg), 1) + massUnit();
  }

  /** A mass as a limit, or as the worst that there may be. */
  String mass(Limit limit, double kg) {
    return plain(limit.decimal(inMassUnits(kg), 1)) + massUnit();
  }

  private double inMassUnits(double kg) {
    return units == Units.INCH ? kg / KG_PER_LB : kg;
  }

  private String massUnit() {
    return units == Units.INCH ? " lb" : " kg";
  }

  /** As {@link AnchorLoads#force}. */
  String force(Limit limit, double newtons) {
    return AnchorLoads.force(units, limit, newtons);
  }

  /** As {@link AnchorLoads#moment}. */
  String moment(Limit limit, double newtonMm) {
    return AnchorLoads.moment(units, limit, newtonMm);
  }

  /** {@code 15.1 lb/ft²}, {@code 73.7 kg/m²}. */
  String massPerArea(double kgPerM2) {
    return decimal(inAreaUnits(kgPerM2), 1) + areaUnit();
  }

  /** Mass per area as a limit, or as the worst that there may be. */
  String massPerArea(Limit limit, double kgPerM2) {
    return plain(limit.decimal(inAreaUnits(kgPerM2), 1)) + areaUnit();
  }

  /** Mass per area that passes a limit, with a word where it would read like it. */
  String massPerAreaOver(double kgPerM2, double limit) {
    String text = massPerArea(kgPerM2);
    return text.equals(massPerArea(Limit.MOST, limit)) ? words.say("rule.just-over", text) : text;
  }

  private double inAreaUnits(double kgPerM2) {
    return units == Units.INCH ? kgPerM2 / KG_PER_LB * M2_PER_FT2 : kgPerM2;
  }

  private String areaUnit() {
    return units == Units.INCH ? " lb/ft²" : " kg/m²";
  }

  /** {@code 721 in²}, {@code 0.465 m²}. */
  String area(Limit limit, double m2) {
    return units == Units.INCH
        ? plain(limit.decimal(m2 / M2_PER_IN2, 0)) + " in²"
        : plain(limit.decimal(m2, 3)) + " m²";
  }

  /** {@code 60.0°}. */
  static String degrees(Limit limit, Angle angle) {
    return limit.decimal(angle.degrees(), 1).toPlainString() + "°";
  }

  /** {@code 12 %}. */
  static String percent(double fraction) {
    return decimal(fraction * 100, 0) + " %";
  }

  /** A share as a limit, or as the worst that there may be. */
  static String percent(Limit limit, double fraction) {
    return plain(limit.decimal(fraction * 100, 0)) + " %";
  }

  /** A number as a limit, or as the worst that there may be; zeros left off. */
  static String decimal(Limit limit, double value, int decimals) {
    return plain(limit.decimal(value, decimals));
  }

  /** A number with at most so many decimals, zeros left off. */
  static String decimal(double value, int decimals) {
    return plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  private static String plain(BigDecimal d) {
    return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
  }
}
