package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.Optional;

/** No end stone bears less than the job asks. */
final class BearingAskedRule implements SideRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "bearing-asked", "Each end passes its jamb by the bearing the job asks", Severity.ERROR);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Side side) {
    Length least = head.layout().opening().head().bearing().min();
    Length bears = Ends.bearing(head, side);
    if (Ends.springs(c, head, side) || bears.compareTo(least) >= 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text("rule.bearing-asked", c.say().length(bears, least), c.say().least(least)));
  }
}
