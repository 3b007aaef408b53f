package headcourse.bench;

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
 * @param alike number of its ticket: pieces that are cut alike share one
 * @param measures what a tape checks it by
 * @param left rake of the left edge
 * @param right rake of the right edge
 * @param thickness thickness
 * @param leg what of it runs back under the head
 * @param mass with its soffit piece, but where it has no return the face alone
 * @param exposed edges to be dressed
 * @param saw passes in cutting order
 * @param notches slots
 * @param soffitPieces flats that cover the soffit behind it; empty where its return does
 */
public record Piece(
    String mark,
    PlacedStone stone,
    int setOrder,
    int alike,
    Measures measures,
    Rake left,
    Rake right,
    Length thickness,
    ReturnLeg leg,
    Mass mass,
    List<ExposedEdge> exposed,
    List<SawPass> saw,
    List<Notch> notches,
    List<SoffitPiece> soffitPieces) {
  /** Copies the lists. */
  public Piece {
    exposed = List.copyOf(exposed);
    saw = List.copyOf(saw);
    notches = List.copyOf(notches);
    soffitPieces = List.copyOf(soffitPieces);
  }

  /** This piece with the number of its ticket. */
  Piece alike(int number) {
    return new Piece(
        mark,
        stone,
        setOrder,
        number,
        measures,
        left,
        right,
        thickness,
        leg,
        mass,
        exposed,
        saw,
        notches,
        soffitPieces);
  }

  /** Lifting mass of all that hangs there: the stone, and what its own mass leaves out, kg. */
  public double hangingKg() {
    double apart =
        leg.present() ? 0 : soffitPieces.stream().mapToDouble(SoffitPiece::liftingKg).sum();
    return mass.liftingKg() + apart;
  }

  /** Whether stone covers the soffit behind its face. */
  public boolean coversSoffit() {
    return leg.present() || !soffitPieces.isEmpty();
  }
}
