package headcourse.rules;

import headcourse.bench.Anchor;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.job.AnchorKind;
import headcourse.job.Backing;
import headcourse.job.Job;
import headcourse.job.Wall;
import headcourse.units.Length;
import headcourse.units.Limit;
import headcourse.units.Units;

/**
 * Figures of one screw for the engineer who designs the fastening: no design values, since no
 * factor for duration, wetness, spacing or edges is in them. SI units.
 *
 * @param weightN weight of the stone by its heaviest plausible density, N
 * @param screws how many screws the stone has that hold
 * @param threadMm length of thread in wood, along the screw, mm
 * @param withdrawalN {@code 2850 G² D} lb per inch of thread in wood (NDS), G specific gravity, D
 *     shank in inches; NaN where it holds in something else, for which the maker's figure stands
 * @param leverMm from the stone's back to what holds, along the screw, mm
 * @param momentNmm of the screw's share of the weight on that lever as a cantilever, N·mm: while
 *     the mortar is green nothing else carries the stone
 * @param yieldNmm {@code F D³/6}, at which the screw bends for good, N·mm; D the root, F the
 *     bending yield strength by diameter (NDS, from memory); NaN for other kinds than wood screws
 */
public record AnchorLoads(
    double weightN,
    int screws,
    double threadMm,
    double withdrawalN,
    double leverMm,
    double momentNmm,
    double yieldNmm) {
  /** Newtons in a pound-force. */
  static final double N_PER_LBF = 4.4482216152605;

  /** Standard gravity, m/s². */
  public static final double GRAVITY = 9.80665;

  private static final double MM_PER_IN = 25.4;

  /** Root over shank: 0.152 over 0.190 in for a number 10 wood screw (from memory). */
  private static final double ROOT = 0.8;

  /** About two thirds of a wood screw's length are threaded (from memory). */
  private static final double THREADED = 2 / 3.0;

  /** The figures of a screw in a slot of a stone; the slot must have one. */
  public static AnchorLoads of(Job job, Piece piece, Notch notch) {
    Anchor a = notch.anchor();
    Wall wall = job.wall();
    double sin = Math.sin(notch.slant().radians());
    int n = (int) piece.notches().stream().filter(o -> o.screw() != null).count();
    double weight = piece.mass().liftingKg() * GRAVITY;
    boolean wood = a.kind() == AnchorKind.WOOD_SCREW && a.holdsIn() == Backing.Kind.WOOD;
    Length sheathing = wall.sheathing().holds() ? wall.sheathing().thickness() : Length.ZERO;
    double along = Math.max(0, a.penetration().minus(sheathing).mm()) / sin;
    double thread = wood ? Math.min(along, a.screw().mm() * THREADED) : 0;
    double d = job.fastener().shank().inches();
    double g = a.behind().gravity();
    double withdrawal = 2850 * g * g * d * N_PER_LBF / MM_PER_IN * thread;
    Length proud = piece.stone().proud().max(Length.ZERO);
    double lever = wall.bed().plus(proud).plus(wall.idle()).mm() / sin;
    boolean known = a.kind() == AnchorKind.WOOD_SCREW && strength(d) > 0;
    return new AnchorLoads(
        weight,
        n,
        thread,
        wood ? withdrawal : Double.NaN,
        lever,
        weight / n * lever,
        known ? yieldMoment(d) : Double.NaN);
  }

  /** Yield moment of a wood screw of a shank in inches, N·mm. */
  static double yieldMoment(double shankInches) {
    double root = ROOT * shankInches;
    return strength(shankInches) * Math.pow(root, 3) / 6 * N_PER_LBF * MM_PER_IN;
  }

  /** Bending yield strength by diameter, lb/in² (NDS, from memory); 0 beyond its table. */
  private static double strength(double d) {
    double[][] table = {
      {0.142, 100_000},
      {0.177, 90_000},
      {0.236, 80_000},
      {0.273, 70_000},
      {0.344, 60_000},
      {0.375, 45_000}
    };
    for (double[] row : table) {
      if (d <= row[0] + 1e-9) {
        return row[1];
      }
    }
    return 0;
  }

  /** Whether the weight alone would bend the screw. */
  boolean bends() {
    return momentNmm > yieldNmm;
  }

  /** A force on the safe side: {@code 135 lb}, {@code 600 N}. */
  public static String force(Units units, Limit limit, double newtons) {
    return units == Units.INCH
        ? limit.decimal(newtons / N_PER_LBF, 0).toPlainString() + " lb"
        : limit.decimal(newtons, 0).toPlainString() + " N";
  }

  /** A moment on the safe side: {@code 46 lb·in}, {@code 5.3 N·m}. */
  public static String moment(Units units, Limit limit, double newtonMm) {
    return units == Units.INCH
        ? limit.decimal(newtonMm / N_PER_LBF / MM_PER_IN, 0).toPlainString() + " lb·in"
        : limit.decimal(newtonMm / 1000, 1).toPlainString() + " N·m";
  }
}
