package headcourse.bench;

import headcourse.bench.ExposedEdge.Why;
import headcourse.geom.Edge;
import headcourse.job.HeadSpec.Soffit;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.VSoffit;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Finds the strips of a stone's cut edges that stay in view. */
final class ExposedEdges {
  private ExposedEdges() {}

  /**
   * Lists them: below, beside and above what covers each side; round a stone that stands proud; and
   * the lower edge of stones cut from flats, and of a V.
   */
  static List<ExposedEdge> find(
      StoneFrame frame,
      Contact left,
      Contact right,
      Length thickness,
      ReturnLeg leg,
      Soffit soffit) {
    List<ExposedEdge> found = new ArrayList<>();
    beside(found, frame, Where.LEFT, left, thickness, leg);
    beside(found, frame, Where.RIGHT, right, thickness, leg);
    Length proud = frame.stone().proud();
    if (proud.isPositive()) {
      add(found, EdgeName.TOP, Why.PROUD, length(frame, Where.TOP), proud);
    }
    boolean v = VSoffit.of(frame.stone()).isPresent();
    if (v || soffit == Soffit.NONE || (soffit == Soffit.BUTTED && leg.present())) {
      // A V cut out of a corner shows as deep as its return.
      Length deep = v && leg.present() ? leg.depth() : thickness;
      add(found, EdgeName.SOFFIT, Why.SOFFIT, length(frame, Where.SOFFIT), deep);
    }
    return found;
  }

  private static void beside(
      List<ExposedEdge> found,
      StoneFrame frame,
      Where side,
      Contact contact,
      Length thickness,
      ReturnLeg leg) {
    EdgeName name = frame.name(side);
    // Below a neighbour's soffit the end of the return is in view as well.
    Length below = leg.reaches(frame, side) ? leg.depth() : thickness;
    add(found, name, Why.DROP, contact.from(), below);
    add(found, name, Why.PROUD, contact.to() - contact.from(), Length.mm(contact.proud()));
    add(found, name, Why.RISE, contact.length() - contact.to(), thickness);
  }

  private static void add(
      List<ExposedEdge> found, EdgeName name, Why why, double length, Length depth) {
    if (Length.mm(length).isPositive() && depth.isPositive()) {
      found.add(new ExposedEdge(name, why, Length.mm(length), depth));
    }
  }

  private static double length(StoneFrame frame, Where side) {
    return frame.stone().edges(side).stream().mapToDouble(Edge::length).sum();
  }
}
