package headcourse.rules;

import headcourse.job.Job;
import headcourse.text.Words;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
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
  private final Words words;

  private Figures(Units units, Grid grid, Words words) {
    this.words = words;
    this.units = units;
    this.format = new LengthFormat(units, grid);
  }

  /** Figures for a job: lengths to its grid, or finer where the grid is coarse. */
  static Figures of(Job job, Words words) {
    Length fine = job.units() == Units.INCH ? Length.inches(1 / 32.0) : Length.mm(0.5);
    return new Figures(job.units(), new Grid(job.grid().tick().min(fine)), words);
  }

  /** {@code 7 1/2"}, {@code 190 mm}. */
  String length(Length length) {
    return format.plainWithUnit(length);
  }

  /** The same rounded up, for what is wanting. */
  String up(Length length) {
    return length(grid().ticks(grid().ceil(length)));
  }

  /** The step that lengths are said to. */
  Grid grid() {
    return format.grid();
  }

  /** {@code 16'-0"} from a foot up, {@code 4877 mm}. */
  String span(Length length) {
    Length foot = Length.inches(12);
    if (units != Units.INCH || length.compareTo(foot) < 0) {
      return length(length);
    }
    Length rounded = format.grid().snap(length);
    long feet = rounded.picometres() / foot.picometres();
    Length rest = rounded.minus(foot.times(feet));
    String nought = rest.isZero() || rest.compareTo(Length.inches(1)) >= 0 ? "" : "0 ";
    return feet + "'-" + nought + format.plain(rest) + "\"";
  }

  /** The first length, with a word where it would read like the limit that it breaks. */
  String length(Length value, Length limit) {
    String text = length(value);
    int side = value.compareTo(limit);
    if (side == 0 || !text.equals(length(limit))) {
      return text;
    }
    return words.say(side > 0 ? "rule.just-over" : "rule.just-under", text);
  }

  /** {@code 55.3 lb}, {@code 25.1 kg}. */
  String mass(double kg) {
    return units == Units.INCH ? decimal(kg / KG_PER_LB, 1) + " lb" : decimal(kg, 1) + " kg";
  }

  /** {@code 15.1 lb/ft²}, {@code 73.7 kg/m²}. */
  String massPerArea(double kgPerM2) {
    return units == Units.INCH
        ? decimal(kgPerM2 / KG_PER_LB * M2_PER_FT2, 1) + " lb/ft²"
        : decimal(kgPerM2, 1) + " kg/m²";
  }

  /** {@code 721 in²}, {@code 0.465 m²}. */
  String area(double m2) {
    return units == Units.INCH ? decimal(m2 / M2_PER_IN2, 0) + " in²" : decimal(m2, 3) + " m²";
  }

  /** {@code 12 %}. */
  static String percent(double fraction) {
    return decimal(fraction * 100, 0) + " %";
  }

  /** A number with at most so many decimals, zeros left off. */
  static String decimal(double value, int decimals) {
    BigDecimal d = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
  }
}
