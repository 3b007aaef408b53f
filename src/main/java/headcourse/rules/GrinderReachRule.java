package headcourse.rules;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** The grinder's blade is large enough for the slots. */
final class GrinderReachRule implements NotchRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "grinder-reach", "The blade plunges no deeper than its flange lets it", Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("grinder-flange", "diameter of the flange that holds the grinder's blade");
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    Length flange = c.length("grinder-flange", 1.625, 41);
    Length blade = c.job().tools().grinder().blade();
    Length reach = blade.minus(flange).half().max(Length.ZERO);
    return notch.plunge().compareTo(reach) <= 0
        ? Optional.empty()
        : Optional.of(
            c.text(
                "rule.grinder-reach",
                c.say().length(notch.plunge(), reach),
                c.say().length(blade),
                c.say().most(reach)));
  }
}
