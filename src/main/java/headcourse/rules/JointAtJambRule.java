package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.geom.Point;
import headcourse.layout.JointLine;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** No joint falls in line with a jamb. */
final class JointAtJambRule implements Rule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "joint-at-jamb",
        "No joint, and no end, stands within the job's clear distance of the jamb line",
        Severity.ERROR);
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    List<FindingDraft> hits = new ArrayList<>();
    for (HeadWork head : c.heads()) {
      Length clear = head.layout().opening().head().clear();
      for (JointLine joint : head.layout().joints()) {
        if (joint.side() == Side.CENTRE
            || joint.outer().isEmpty() && Ends.springs(c, head, joint.side())) {
          continue;
        }
        Length off = off(c, head, joint);
        if (off.minus(clear).mm() < -1e-6) {
          hits.add(FindingDraft.head(head, text(c, joint, off, clear)));
        }
      }
    }
    return hits;
  }

  /**
   * Distance from the jamb line to the joint's nearer edge, between running marks: a raked joint is
   * a hair wider along the soffit than square to itself, and marks don't show that.
   */
  private static Length off(RuleContext c, HeadWork head, JointLine joint) {
    Point jamb = new Point(joint.side().sign() * head.layout().jamb(joint.side()).mm(), 0);
    double half = joint.outer().isEmpty() ? 0 : c.job().setting().joint().mm() / 2;
    double gap =
        Shape.of(head) == Shape.CURVED
            ? joint.foot().distance(jamb) - half
            : Math.abs(foot(joint) - jamb.x()) - half;
    return Length.mm(Math.max(0, gap));
  }

  /**
   * On the soffit line, where it is measured, though under a camber the joint begins above it. An
   * end is the stone's own edge, without half a joint beyond it.
   */
  private static double foot(JointLine joint) {
    if (joint.outer().isEmpty()) {
      return joint.side().sign() * joint.soffitMark().mm();
    }
    Point foot = joint.foot();
    Point head = joint.head();
    return foot.x() - foot.y() * (head.x() - foot.x()) / (head.y() - foot.y());
  }

  private static String text(RuleContext c, JointLine joint, Length off, Length clear) {
    String what =
        joint.outer().isEmpty()
            ? c.text("rule.joint-at-jamb.end", joint.inner())
            : joint.inner().isEmpty()
                ? c.text("rule.joint-at-jamb.inside", joint.outer())
                : c.text("rule.joint-at-jamb.between", joint.inner(), joint.outer());
    return off.isZero()
        ? c.text("rule.joint-at-jamb.in-line", what, c.say().least(clear))
        : c.text("rule.joint-at-jamb.near", what, c.say().length(off, clear), c.say().least(clear));
  }
}
