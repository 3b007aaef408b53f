package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Thin stone is as thick as its makers sell it. */
final class ThicknessRangeRule implements JobRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "thickness-range",
        "Thin stone is 3/4 to 1 1/2 in thick",
        Severity.WARNING,
        "Building Stone Institute guideline",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Stream.of(
            Rule.length("thickness-least", "thinnest stone"),
            Rule.length("thickness-most", "thickest thin stone"))
        .flatMap(List::stream)
        .toList();
  }

  @Override
  public Optional<String> look(RuleContext c) {
    Length least = c.length("thickness-least", 3 / 4.0, 19);
    Length most = c.length("thickness-most", 1.5, 38);
    Length thick = c.job().stone().thickness();
    if (thick.compareTo(least) >= 0 && thick.compareTo(most) <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            "rule.thickness-range",
            c.say().length(thick, thick.compareTo(least) < 0 ? least : most),
            c.say().least(least),
            c.say().most(most)));
  }
}
