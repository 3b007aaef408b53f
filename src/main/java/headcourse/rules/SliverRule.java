package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** No sliver of wall is left beside an end. */
final class SliverRule implements SideRule {
  /** What is too narrow to be cut, set and looked at. */
  static Length width(RuleContext c) {
    return c.length("sliver", 2, 50);
  }

  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "sliver",
        "No strip of wall narrower than 2 in (50 mm) is left between an end and the wall's edge",
        Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("sliver", "narrowest leftover that is still worth setting");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Side side) {
    Length bears = Ends.bearing(head, side).max(Ends.reach(head, side));
    Length least = width(c);
    return Ends.wall(head, side)
        .map(wall -> wall.minus(bears))
        .filter(left -> left.isPositive() && left.compareTo(least) < 0)
        .map(left -> c.text("rule.sliver", c.say().length(left, least), c.say().least(least)));
  }
}
