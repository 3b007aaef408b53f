package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.Optional;

/** An end stays on the wall that there is. */
final class WallBesideRule implements SideRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "wall-beside", "An end stays on the wall beside the opening", Severity.ERROR);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Side side) {
    Length bears = Ends.bearing(head, side).max(Ends.reach(head, side));
    return Ends.wall(head, side)
        .filter(wall -> bears.compareTo(wall) > 0)
        .map(wall -> c.text("rule.wall-beside", c.say().length(bears, wall), c.say().most(wall)));
  }
}
