package headcourse.rules;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.units.Length;
import java.util.Optional;

/** A screw at hand is long enough to bite. */
final class ScrewReachRule implements NotchRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "screw-reach",
        "A screw at hand reaches the job's embedment behind the bed",
        Severity.ERROR);
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    Length least = c.job().fastener().embedment();
    if (notch.screw() == null) {
      return c.job().fastener().lengths().stream()
          .reduce(Length::max)
          .map(l -> c.text("rule.screw-reach.none-long", c.say().least(least), c.say().length(l)))
          .or(() -> Optional.of(c.text("rule.screw-reach.none", c.say().least(least))));
    }
    return notch.penetration().compareTo(least) >= 0
        ? Optional.empty()
        : Optional.of(
            c.text(
                "rule.screw-reach.short",
                c.say().length(notch.screw()),
                c.say().length(notch.penetration(), least),
                c.say().least(least)));
  }
}
