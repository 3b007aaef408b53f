package headcourse.bench;

import headcourse.geom.Similarity;
import headcourse.layout.FaceEdge;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The mirror image of a head, left for right. */
final class MirroredHead {
  private MirroredHead() {}

  static HeadLayout of(HeadLayout h) {
    List<PlacedStone> stones = new ArrayList<>();
    h.stones().forEach(s -> stones.add(0, stone(s)));
    List<JointLine> joints = new ArrayList<>();
    h.joints().forEach(j -> joints.add(joint(j)));
    return new HeadLayout(
        h.opening(), h.halfWidth(), stones, joints, h.curve(), h.proof(), h.remarks());
  }

  static String mark(String mark) {
    return mark.startsWith("L")
        ? "R" + mark.substring(1)
        : mark.startsWith("R") ? "L" + mark.substring(1) : mark;
  }

  private static Side side(Side side) {
    return side == Side.LEFT ? Side.RIGHT : side == Side.RIGHT ? Side.LEFT : side;
  }

  private static JointLine joint(JointLine j) {
    return new JointLine(
        side(j.side()),
        j.index(),
        j.foot().mirrored(),
        j.head().mirrored(),
        j.soffitMark(),
        j.topMark(),
        mark(j.inner()),
        mark(j.outer()));
  }

  private static PlacedStone.Feet feet(PlacedStone.Feet f) {
    return new PlacedStone.Feet(
        f.rightSoffit().negated(),
        f.leftSoffit().negated(),
        f.rightTop().negated(),
        f.leftTop().negated());
  }

  private static PlacedStone stone(PlacedStone s) {
    List<FaceEdge> face = new ArrayList<>();
    for (FaceEdge e : s.face()) {
      Where where =
          e.where() == Where.LEFT ? Where.RIGHT : e.where() == Where.RIGHT ? Where.LEFT : e.where();
      face.add(0, new FaceEdge(e.edge().transformed(Similarity.mirrorX()).reversed(), where));
    }
    long soffits = face.stream().filter(e -> e.where() == Where.SOFFIT).count();
    Collections.rotate(face, (int) soffits);
    return new PlacedStone(
        mark(s.mark()),
        s.role(),
        side(s.side()),
        s.index(),
        face,
        feet(s.feet()),
        s.bottom(),
        s.top(),
        s.height(),
        s.proud(),
        s.chordDeviation(),
        s.fitted());
  }
}
