package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;
import java.util.Optional;

/** What the lath behind the stone must do. */
final class LathRule implements JobRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "lath",
        "Lath laps 3 in and wraps corners 16 in; the wall is true within 1/4 in in 10 ft",
        Severity.NOTE,
        "BIA Technical Note 28C (2014) and a supplier's guide",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public Optional<String> look(RuleContext c) {
    if (c.heads().isEmpty() || !c.job().wall().scratch().isPositive()) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            "rule.lath",
            c.say().least(c.inUnits(3, 75)),
            c.say().least(c.inUnits(16, 400)),
            c.text(c.metric() ? "rule.lath.true-metric" : "rule.lath.true-inch")));
  }
}
