package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** There is mortar enough behind the stone. */
final class BedLeastRule implements JobRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "bed-least",
        "The setting bed is at least 1/2 in thick, over the whole back",
        Severity.WARNING,
        "summary of the Building Stone Institute guideline",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("bed-least", "thinnest setting bed");
  }

  @Override
  public Optional<String> look(RuleContext c) {
    Length least = c.length("bed-least", 1 / 2.0, 12);
    Length bed = c.job().wall().bed();
    return bed.compareTo(least) >= 0
        ? Optional.empty()
        : Optional.of(c.text("rule.bed-least", c.say().length(bed, least), c.say().least(least)));
  }
}
