package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** A segmental arch rises enough to look like one. */
final class SegmentalRiseRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "segmental-rise",
        "A segmental head rises at least 1 in per foot of span",
        Severity.WARNING,
        "Norton, Ohio, code 1434.21(e)",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("segmental-rise", "least rise of a segmental head, whatever its span");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    if (!Shape.name(head).equals("segmental")) {
      return Optional.empty();
    }
    Length least = c.length("segmental-rise", Length.inches(c.span(head).inches() / 12));
    return Rises.of(head)
        .filter(rise -> rise.minus(least).mm() < -1e-6)
        .map(
            rise ->
                c.text(
                    "rule.segmental-rise",
                    c.say().length(rise, least),
                    c.say().span(c.span(head)),
                    c.say().least(least)));
  }
}
