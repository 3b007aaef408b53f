package headcourse.bench;

import headcourse.geom.Point;
import headcourse.layout.PlacedStone;
import headcourse.units.Length;
import java.util.List;

/**
 * Everything the bench needs to know of one stone. Printed lengths are on the grid, except edge
 * lengths and diagonals, which are rounded to it once for print.
 *
 * @param mark full mark, as in D1-L1
 * @param stone the stone in its place
 * @param setOrder from 1
 * @param leftEdge length of the left edge, exact
 * @param rightEdge length of the right edge, exact
 * @param diagonalRising lower left to upper right corner, exact
 * @param diagonalFalling upper left to lower right corner, exact
 * @param left rake of the left edge
 * @param right rake of the right edge
 * @param thickness thickness
 * @param returnDepth outside depth of the return; zero without one
 * @param relief how far the return is cut away from the outer end inward; zero where it is not
 * @param seatFrom x of the return's outer end after the relief, mm in model space
 * @param extent extent of the outline along its soffit's chord, along x in flat heads; exact
 * @param areaM2 face area, m²
 * @param volumeM3 volume, m³
 * @param massKg mass by the stone's density; with its soffit piece, but where {@code returnDepth}
 *     is zero the face alone
 * @param liftingKg mass by the heaviest plausible density
 * @param centreOfMass in the plane of the face, model space
 * @param centreDepth of the centre of mass behind the face, mm
 * @param exposed edges to be dressed
 * @param saw passes in cutting order
 * @param notches slots
 * @param soffitPieces flats that cover the soffit behind it; empty where its return does
 * @param alike number of its ticket: pieces that are cut alike share one
 */
public record Piece(
    String mark,
    PlacedStone stone,
    int setOrder,
    Length leftEdge,
    Length rightEdge,
    Length diagonalRising,
    Length diagonalFalling,
    Rake left,
    Rake right,
    Length thickness,
    Length returnDepth,
    Length relief,
    double seatFrom,
    Length extent,
    double areaM2,
    double volumeM3,
    double massKg,
    double liftingKg,
    Point centreOfMass,
    double centreDepth,
    List<ExposedEdge> exposed,
    List<SawPass> saw,
    List<Notch> notches,
    List<SoffitPiece> soffitPieces,
    int alike) {
  /** Copies the lists. */
  public Piece {
    exposed = List.copyOf(exposed);
    saw = List.copyOf(saw);
    notches = List.copyOf(notches);
    soffitPieces = List.copyOf(soffitPieces);
  }

  /** A stone without soffit pieces. */
  public Piece(
      String mark,
      PlacedStone stone,
      int setOrder,
      Length leftEdge,
      Length rightEdge,
      Length diagonalRising,
      Length diagonalFalling,
      Rake left,
      Rake right,
      Length thickness,
      Length returnDepth,
      Length relief,
      double seatFrom,
      Length extent,
      double areaM2,
      double volumeM3,
      double massKg,
      double liftingKg,
      Point centreOfMass,
      double centreDepth,
      List<ExposedEdge> exposed,
      List<SawPass> saw,
      List<Notch> notches,
      int alike) {
    this(
        mark,
        stone,
        setOrder,
        leftEdge,
        rightEdge,
        diagonalRising,
        diagonalFalling,
        left,
        right,
        thickness,
        returnDepth,
        relief,
        seatFrom,
        extent,
        areaM2,
        volumeM3,
        massKg,
        liftingKg,
        centreOfMass,
        centreDepth,
        exposed,
        saw,
        notches,
        List.of(),
        alike);
  }

  /** This piece with the number of its ticket. */
  Piece alike(int number) {
    return new Piece(
        mark,
        stone,
        setOrder,
        leftEdge,
        rightEdge,
        diagonalRising,
        diagonalFalling,
        left,
        right,
        thickness,
        returnDepth,
        relief,
        seatFrom,
        extent,
        areaM2,
        volumeM3,
        massKg,
        liftingKg,
        centreOfMass,
        centreDepth,
        exposed,
        saw,
        notches,
        soffitPieces,
        number);
  }

  /** Lifting mass of all that hangs there: the stone, and what its own mass leaves out, kg. */
  public double hangingKg() {
    double apart =
        returnDepth.isZero() ? soffitPieces.stream().mapToDouble(SoffitPiece::liftingKg).sum() : 0;
    return liftingKg + apart;
  }

  /** Whether stone covers the soffit behind its face. */
  public boolean coversSoffit() {
    return returnDepth.isPositive() || !soffitPieces.isEmpty();
  }
}
