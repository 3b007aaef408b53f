package headcourse.bench;

import headcourse.geom.Path;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.List;

/**
 * A flat that covers the soffit behind a stone whose face is a flat too. It lies with its long side
 * along the soffit; seen from outside its ends follow the joints of the stone above, or end plumb
 * on the jamb's seat. Lengths are exact, angles off square to its own underside.
 *
 * @param mark full mark, as in D1-L3-S; under a V one for each flank, as in D1-K-SL
 * @param joint how it meets the face
 * @param section the piece as seen from outside, model space
 * @param underside length along its underside, what shows from below
 * @param upper length along its upper side
 * @param length the longer reach of the two together: what it is cut from
 * @param depth from its outer edge to its back, along the underside
 * @param thickness thickness
 * @param left how its left end runs
 * @param right how its right end runs
 * @param relief how much shorter it is than the stone above, at the end past the jamb
 * @param seated whether its outer end lies on the jamb's seat
 * @param notches the slots for its own screws; empty where nothing it reaches under would hold one
 * @param volumeM3 volume, m³
 * @param massKg mass by the stone's density
 * @param liftingKg mass by the heaviest plausible density
 */
public record SoffitPiece(
    String mark,
    Joint joint,
    Path section,
    Length underside,
    Length upper,
    Length length,
    Length depth,
    Length thickness,
    End left,
    End right,
    Length relief,
    boolean seated,
    List<SoffitNotch> notches,
    double volumeM3,
    double massKg,
    double liftingKg) {
  /** Copies the list. */
  public SoffitPiece {
    notches = List.copyOf(notches);
  }

  /** Whether a screw of its own holds it. */
  public boolean held() {
    return notches.stream().anyMatch(n -> n.anchor().screw() != null);
  }

  /** How soffit and face meet. */
  public enum Joint {
    /** At 45° along the arris. */
    MITRED,
    /** The soffit stands behind the face. */
    BUTTED;

    /** The word in output. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /**
   * An end.
   *
   * @param offSquare off square, never negative
   * @param longPoint {@code TOP} where the upper side is the longer one at this end
   */
  public record End(Angle offSquare, Rake.LongPoint longPoint) {}
}
