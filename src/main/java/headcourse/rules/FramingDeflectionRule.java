package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** What holds the veneer bends but little. */
final class FramingDeflectionRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "framing-deflection",
        "Framing that carries veneer bends no more than a 600th of its span",
        Severity.NOTE,
        "IRC R703.7.2",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.number("framing-deflection", "span over the most that framing may bend, as in 600");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    if (!c.job().wall().framing().isPositive()) {
      return Optional.empty();
    }
    double part = c.number("framing-deflection", 600);
    Length most = Length.mm(c.span(head).mm() / part);
    return Optional.of(
        c.text(
            "rule.framing-deflection",
            c.say().span(c.span(head)),
            c.say().length(most),
            Figures.decimal(part, 0)));
  }
}
