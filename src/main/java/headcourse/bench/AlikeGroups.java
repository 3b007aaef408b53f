package headcourse.bench;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.layout.FaceEdge;
import headcourse.layout.FaceEdge.Where;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the pieces that are cut alike: the same outline when laid upon each other without turning
 * over, the same return, relief, slots and edges to be dressed, and the same role.
 */
final class AlikeGroups {
  private AlikeGroups() {}

  /** For each piece the number of its group, from 1 in order of first appearance. */
  static List<Integer> number(List<Piece> pieces) {
    List<Piece> firsts = new ArrayList<>();
    List<StoneFrame> frames = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (Piece piece : pieces) {
      StoneFrame frame = StoneFrame.of(piece.stone());
      int found = 0;
      while (found < firsts.size() && !alike(firsts.get(found), piece, frames.get(found), frame)) {
        found++;
      }
      if (found == firsts.size()) {
        firsts.add(piece);
        frames.add(frame);
      }
      numbers.add(found + 1);
    }
    return numbers;
  }

  private static boolean alike(Piece a, Piece b, StoneFrame fa, StoneFrame fb) {
    return a.stone().role() == b.stone().role()
        && a.stone().proud().equals(b.stone().proud())
        && a.stone().fitted() == b.stone().fitted()
        && a.thickness().equals(b.thickness())
        && a.leg().depth().equals(b.leg().depth())
        && a.leg().relief().equals(b.leg().relief())
        && (a.leg().relief().isZero() || fa.outer() == fb.outer())
        && sameOutline(fa, fb)
        && sameNotches(a, b, fa, fb)
        && sameSoffit(a, b)
        && sameExposed(a, b, fa, fb);
  }

  private static boolean sameOutline(StoneFrame a, StoneFrame b) {
    List<FaceEdge> ea = a.stone().face();
    List<FaceEdge> eb = b.stone().face();
    if (ea.size() != eb.size()) {
      return false;
    }
    for (int i = 0; i < ea.size(); i++) {
      Edge x = ea.get(i).edge();
      Edge y = eb.get(i).edge();
      if (ea.get(i).where() != eb.get(i).where() || x.getClass() != y.getClass()) {
        return false;
      }
      // Three places settle a straight edge and an arc; an ellipse's fourth is for its slant.
      for (double t : new double[] {0, 0.3, 0.7, 1}) {
        if (!same(a, x.at(t), b, y.at(t))) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean same(StoneFrame a, Point p, StoneFrame b, Point q) {
    return a.own(p.minus(a.lowerLeft())).plus(b.own(q.minus(b.lowerLeft())).times(-1)).length()
        <= Tolerance.SAME;
  }

  private static boolean sameNotches(Piece a, Piece b, StoneFrame fa, StoneFrame fb) {
    if (a.notches().size() != b.notches().size()) {
      return false;
    }
    for (int i = 0; i < a.notches().size(); i++) {
      Notch x = a.notches().get(i);
      Notch y = b.notches().get(i);
      if (side(fa, x.edge()) != side(fb, y.edge())
          || !x.height().equals(y.height())
          || !x.mouth().equals(y.mouth())
          || !x.run().equals(y.run())
          || !x.anchor().equals(y.anchor())) {
        return false;
      }
    }
    return true;
  }

  /** Outlines and reliefs that are alike leave only the screws to differ. */
  private static boolean sameSoffit(Piece a, Piece b) {
    return a.soffitPieces().size() == b.soffitPieces().size() && screws(a).equals(screws(b));
  }

  private static List<String> screws(Piece p) {
    return p.soffitPieces().stream()
        .flatMap(s -> s.notches().stream())
        .map(n -> n.edge() + " " + n.place() + " " + n.anchor().screw())
        .toList();
  }

  private static boolean sameExposed(Piece a, Piece b, StoneFrame fa, StoneFrame fb) {
    if (a.exposed().size() != b.exposed().size()) {
      return false;
    }
    for (int i = 0; i < a.exposed().size(); i++) {
      ExposedEdge x = a.exposed().get(i);
      ExposedEdge y = b.exposed().get(i);
      if (side(fa, x.edge()) != side(fb, y.edge())
          || x.why() != y.why()
          || Math.abs(x.length().minus(y.length()).mm()) > Tolerance.SAME
          || !x.depth().equals(y.depth())) {
        return false;
      }
    }
    return true;
  }

  private static Where side(StoneFrame frame, EdgeName edge) {
    if (edge == EdgeName.TOP) {
      return Where.TOP;
    }
    if (edge == EdgeName.SOFFIT) {
      return Where.SOFFIT;
    }
    return frame.name(Where.LEFT) == edge ? Where.LEFT : Where.RIGHT;
  }
}
