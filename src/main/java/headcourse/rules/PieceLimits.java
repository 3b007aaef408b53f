package headcourse.rules;

import headcourse.bench.Piece;
import headcourse.units.Length;

/** What the code for adhered veneer is called in the edition that a job follows. */
final class PieceLimits {
  /** The source of the limits of the 2016 edition. */
  static final String TMS = "TMS 402-11 §6.3, TMS 402-13 and -16 §12.3";

  private PieceLimits() {}

  /** The greatest face dimension of a piece along its own edges. */
  static Length longest(Piece p) {
    return p.stone()
        .bottom()
        .max(p.stone().top())
        .max(p.stone().height())
        .max(p.measures().leftEdge())
        .max(p.measures().rightEdge());
  }
}
