package headcourse.rules;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import java.util.Optional;

/** A screw can be driven when its stone goes up. */
final class NotchReachRule implements NotchRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "notch-reach", "The edge with the slot is open when the stone goes up", Severity.ERROR);
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    return notch.reachable() ? Optional.empty() : Optional.of(c.text("rule.notch-reach"));
  }
}
