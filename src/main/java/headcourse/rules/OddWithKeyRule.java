package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.layout.Role;
import headcourse.rules.Finding.SourceStatus;
import java.util.Optional;

/** An arch has an odd number of stones with a key in the middle. */
final class OddWithKeyRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "odd-with-key",
        "An arch has an odd number of stones, one of them a key on the centre line",
        Severity.NOTE,
        "Construction Specifier, April 2022",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    int n = head.pieces().size();
    boolean key = head.pieces().stream().anyMatch(p -> p.stone().role() == Role.KEY);
    if (Shape.of(head) == Shape.SOLDIER || n == 0 || key && n % 2 == 1) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            key ? "rule.odd-with-key.key" : "rule.odd-with-key.joint", c.count("rule.stone-", n)));
  }
}
