package headcourse.bench;

import headcourse.units.Angle;
import headcourse.units.Length;

/**
 * The slot for a screw as seen from above: the stone's back at z = 0, its edge at x = 0, cut by a
 * round blade across the corner between them.
 *
 * @param mouth a, how far from the back it reaches on the edge; positive
 * @param run e, how far from the edge it reaches on the back; positive
 * @param radius blade radius, mm; more than half the chord
 */
record Slot(Length mouth, Length run, double radius) {
  /** Slant to the wall plane, {@code α = atan(a/e)}. */
  Angle slant() {
    return Angle.ofRate(mouth.mm(), run.mm());
  }

  /** Its chord {@code c = √(a² + e²)}, mm: how far the screw goes through stone. */
  double chord() {
    return Math.hypot(mouth.mm(), run.mm());
  }

  /** How far the arc bulges past the chord, {@code r − √(r² − c²/4)}, mm. */
  double bulge() {
    return radius - fromCentre();
  }

  /**
   * How deep the blade is lowered from the corner, square to the chord: {@code ae/c} + bulge, mm.
   */
  double plunge() {
    return mouth.mm() * run.mm() / chord() + bulge();
  }

  /**
   * Greatest distance of the arc from the back, mm. Where the blade's centre lies off the stone
   * that is at the mouth; else the arc rises above it.
   */
  double highest() {
    double c = chord();
    double x = run.mm() / 2 - mouth.mm() / c * fromCentre();
    double z = mouth.mm() / 2 - run.mm() / c * fromCentre();
    return x <= 0 ? mouth.mm() : z + radius;
  }

  private double fromCentre() {
    return Math.sqrt(radius * radius - chord() * chord() / 4);
  }
}
