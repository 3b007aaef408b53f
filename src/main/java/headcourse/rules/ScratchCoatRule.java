package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The scratch coat is neither thin nor fat. */
final class ScratchCoatRule implements JobRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "scratch-coat",
        "A scratch coat is 1/2 to 3/4 in thick",
        Severity.WARNING,
        "BIA Technical Note 28C (2014) and a supplier's guide",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Stream.of(
            Rule.length("scratch-least", "thinnest scratch coat"),
            Rule.length("scratch-most", "thickest scratch coat"))
        .flatMap(List::stream)
        .toList();
  }

  @Override
  public Optional<String> look(RuleContext c) {
    Length least = c.length("scratch-least", 1 / 2.0, 12);
    Length most = c.length("scratch-most", 3 / 4.0, 20);
    Length coat = c.job().wall().scratch();
    if (coat.isZero() || coat.compareTo(least) >= 0 && coat.compareTo(most) <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            "rule.scratch-coat",
            c.say().length(coat, coat.compareTo(least) < 0 ? least : most),
            c.say().least(least),
            c.say().most(most)));
  }
}
