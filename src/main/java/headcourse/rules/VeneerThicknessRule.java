package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** Adhered stone is only so thick. */
final class VeneerThicknessRule implements JobRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "veneer-thickness",
        "Adhered stone is at most 2 5/8 in thick",
        Severity.ERROR,
        PieceLimits.TMS,
        SourceStatus.FROM_MEMORY,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("veneer-thickness", "thickest adhered stone");
  }

  @Override
  public Optional<String> look(RuleContext c) {
    Length most = c.length("veneer-thickness", Length.inches(2.625));
    Length thick = c.job().stone().thickness();
    return thick.compareTo(most) <= 0
        ? Optional.empty()
        : Optional.of(
            c.text("rule.veneer-thickness", c.say().length(thick, most), c.say().most(most)));
  }
}
