package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import java.util.Optional;

/** Veneer carries nothing. */
final class CarriesNothingRule implements HeadRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "carries-nothing", "The veneer carries nothing; a lintel by others does", Severity.NOTE);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    return head.pieces().isEmpty()
        ? Optional.empty()
        : Optional.of(c.text("rule.carries-nothing", c.say().span(c.span(head))));
  }
}
