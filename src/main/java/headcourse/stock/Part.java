package headcourse.stock;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.job.HeadSpec;
import headcourse.job.Stock;
import headcourse.layout.FaceEdge;
import headcourse.stock.cutting.Profile;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Something that is cut from one blank: a whole stone, or one of the two flats of a stone whose
 * soffit is made of a flat of its own.
 *
 * @param stone full mark of the stone
 * @param of which part of it
 * @param profile how it lies on the blank
 * @param face height that the blank must have
 * @param returnLeg return leg that the blank must have; zero for a flat
 * @param thickness thickness
 * @param mitred whether it is a soffit strip that meets its face flat at 45°
 */
record Part(
    String stone,
    StockPlan.Part of,
    Profile profile,
    Length face,
    Length returnLeg,
    Length thickness,
    boolean mitred) {

  /** What kind of blank it asks for. */
  Stock.Kind kind() {
    return returnLeg.isPositive() ? Stock.Kind.CORNER : Stock.Kind.FLAT;
  }

  /** Whether an item of the yard has all of its measures but maybe the length. */
  boolean goesOn(Stock.Item item) {
    return Crosscut.of(this).goesOn(item);
  }

  /** Whether it may lie end for end. */
  boolean turnable() {
    return kind() == Stock.Kind.FLAT;
  }

  /** Length along the blank. */
  Length extent() {
    return new Length(Math.round(profile.extent() * 1e6) * 1000);
  }

  /** Whether it is ripped from a flat by the depth of the soffit. */
  boolean strip() {
    return of == StockPlan.Part.SOFFIT;
  }

  /** The parts of all heads in the job's order, identical openings one after another. */
  static List<Part> of(List<HeadWork> heads) {
    List<Part> parts = new ArrayList<>();
    for (HeadWork head : heads) {
      for (int i = 0; i < head.layout().opening().count(); i++) {
        // What was cut and fitted already takes nothing from the yard any more.
        parts.addAll(of(head, false));
      }
    }
    return parts;
  }

  /** The parts of stones that are cut and fitted. */
  static List<Part> fitted(List<HeadWork> heads) {
    return heads.stream().flatMap(h -> of(h, true).stream()).toList();
  }

  /**
   * The places of the first stone with a mark that begins with an open part; its others follow.
   *
   * @param parts of stones one after another
   * @param open by place: whether it counts
   */
  static List<Integer> stone(List<Part> parts, String mark, IntPredicate open) {
    List<Integer> first = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Part p = parts.get(i);
      boolean next =
          first.isEmpty() ? !p.strip() && open.test(i) : p.strip() && first.contains(i - 1);
      if (p.stone().equals(mark) && next) {
        first.add(i);
      }
    }
    return first;
  }

  private static List<Part> of(HeadWork head, boolean fitted) {
    HeadSpec.Soffit soffit = head.layout().opening().head().soffit();
    return head.pieces().stream()
        .filter(p -> p.stone().fitted() == fitted)
        .flatMap(p -> of(p, soffit).stream())
        .toList();
  }

  private static List<Part> of(Piece piece, HeadSpec.Soffit soffit) {
    Profile face = Profile.of(piece.stone().outline(), soffit(piece));
    // The geometry's last digits never ask for a higher blank.
    Length height = new Length(Math.round(face.height() * 1e6) * 1000);
    boolean hasReturn = piece.leg().depth().isPositive();
    boolean corner = hasReturn && soffit == HeadSpec.Soffit.RETURNED;
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part(
            piece.mark(),
            corner || piece.soffitPieces().isEmpty() ? StockPlan.Part.WHOLE : StockPlan.Part.FACE,
            face,
            height,
            corner ? piece.leg().depth() : Length.ZERO,
            piece.thickness(),
            false));
    for (SoffitPiece s : piece.soffitPieces()) {
      parts.add(
          new Part(
              piece.mark(),
              StockPlan.Part.SOFFIT,
              Profile.rectangle(s.length().mm(), s.depth().mm()),
              s.depth(),
              Length.ZERO,
              s.thickness(),
              s.joint() == SoffitPiece.Joint.MITRED));
    }
    return parts;
  }

  private static Vec soffit(Piece piece) {
    List<Edge> edges = piece.stone().edges(FaceEdge.Where.SOFFIT);
    if (edges.isEmpty()) {
      return null;
    }
    Point from = edges.get(0).from();
    Vec along = edges.get(edges.size() - 1).to().minus(from);
    return along.length() > 0 ? along : null;
  }
}
