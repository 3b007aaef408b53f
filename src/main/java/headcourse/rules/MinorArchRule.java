package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import headcourse.units.Limit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Beyond a minor arch's size a real one is an engineer's. */
final class MinorArchRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "minor-arch",
        "A real arch over 6 ft of span, or rising over 0.15 of it, is an engineer's; this one only"
            + " looks like it",
        Severity.NOTE,
        "BIA Technical Note 31A",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Stream.of(
            Rule.length("minor-arch-span", "widest span of a minor arch"),
            Rule.number("minor-arch-rise", "greatest rise of a minor arch over its span"))
        .flatMap(List::stream)
        .toList();
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    if (Shape.of(head) == Shape.SOLDIER) {
      return Optional.empty();
    }
    Length span = c.span(head);
    Length most = c.length("minor-arch-span", Length.inches(72));
    double ratio = Rises.of(head).map(r -> r.mm() / span.mm()).orElse(0.0);
    double steep = c.number("minor-arch-rise", 0.15);
    boolean wide = span.compareTo(most) > 0;
    if (!wide && ratio <= steep + 1e-9) {
      return Optional.empty();
    }
    return Optional.of(
        wide
            ? c.text("rule.minor-arch.span", c.say().span(span), c.say().spanMost(most))
            : c.text(
                "rule.minor-arch.rise",
                Figures.decimal(Limit.LEAST, ratio, 2),
                Figures.decimal(Limit.MOST, steep, 2)));
  }
}
