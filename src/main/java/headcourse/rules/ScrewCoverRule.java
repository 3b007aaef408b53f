package headcourse.rules;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.units.Length;
import java.util.Optional;

/** The slot leaves stone enough before the face. */
final class ScrewCoverRule implements NotchRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "screw-cover",
        "The slot leaves the job's cover to the face, by default a third of the thickness",
        Severity.WARNING);
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    Length least = c.job().fastener().cover();
    return notch.cover().compareTo(least) >= 0
        ? Optional.empty()
        : Optional.of(
            c.text("rule.screw-cover", c.say().length(notch.cover(), least), c.say().least(least)));
  }
}
