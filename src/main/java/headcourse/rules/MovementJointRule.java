package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** A wall moves beside a wide opening, and the head's ends bridge where it does. */
final class MovementJointRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "movement-joint",
        "Veneer has a movement joint at each jamb of an opening over 12 ft",
        Severity.NOTE,
        "a guideline quoted on an inspectors' forum, second hand",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("movement-joint", "widest opening without movement joints at its jambs");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    Length most = c.length("movement-joint", 144, 3660);
    Length span = c.span(head);
    return span.compareTo(most) <= 0
        ? Optional.empty()
        : Optional.of(c.text("rule.movement-joint", c.say().span(span), c.say().spanMost(most)));
  }
}
