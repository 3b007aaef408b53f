package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;
import java.util.Optional;

/** The grinder is used with its guard. */
final class GrinderGuardRule implements JobRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "grinder-guard",
        "The grinder keeps its guard; the wheel is ring-tested and within its rated speed",
        Severity.NOTE,
        "29 CFR 1926.303; ANSI B7.1",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public Optional<String> look(RuleContext c) {
    int slots = 0;
    for (HeadWork head : c.heads()) {
      for (Piece p : head.pieces()) {
        slots += p.notches().size();
      }
    }
    return slots == 0
        ? Optional.empty()
        : Optional.of(c.text("rule.grinder-guard", c.count("rule.slot-", slots)));
  }
}
