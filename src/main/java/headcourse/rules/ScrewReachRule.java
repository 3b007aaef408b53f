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
      String at =
          c.job().fastener().lengths().stream()
              .reduce(Length::max)
              .map(l -> "the longest at hand, " + c.say().length(l) + ", is too short")
              .orElse("none is at hand");
      return Optional.of("no screw reaches " + c.say().length(least) + " behind the bed; " + at);
    }
    return notch.penetration().compareTo(least) >= 0
        ? Optional.empty()
        : Optional.of(
            "a screw of "
                + c.say().length(notch.screw())
                + " reaches "
                + c.say().length(notch.penetration(), least)
                + " behind the bed; least "
                + c.say().length(least));
  }
}
