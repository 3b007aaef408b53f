package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Limit;
import java.util.List;
import java.util.Optional;

/** Stone is ordered over, because a later batch doesn't match. */
final class SpareRule implements JobRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "spare",
        "Corners are ordered 10 to 15 % over, more for dry heads, and all at once",
        Severity.WARNING,
        "Masonry Magazine 2017; suppliers' advice",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.number("spare", "least that is ordered over, as a fraction");
  }

  @Override
  public Optional<String> look(RuleContext c) {
    double least = c.number("spare", 0.1);
    double spare = c.job().stock().spare();
    return c.stock().order().isEmpty() || spare >= least - 1e-9
        ? Optional.empty()
        : Optional.of(c.text("rule.spare", Figures.percent(Limit.MOST, spare)));
  }
}
