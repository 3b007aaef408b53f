package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.Measured;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** Where the rough head is out of level, the bed under the returns can take it up. */
final class BedWedgeRule implements HeadRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "bed-wedge",
        "The bed under the returns takes up what the rough head is out of level, to 1 1/4 in (30 mm)",
        Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("bed-wedge", "thickest bed under a return");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    Measured measured = head.layout().opening().measured();
    if (measured == null || measured.soffit().isEmpty()) {
      return Optional.empty();
    }
    List<Length> levels = measured.soffit().stream().map(Measured.Level::up).toList();
    Length low = levels.stream().reduce(Length::min).orElseThrow();
    Length high = levels.stream().reduce(Length::max).orElseThrow();
    Length most = c.length("bed-wedge", 1.25, 30);
    Length thickest = c.job().wall().bed().plus(high.minus(low));
    return thickest.compareTo(most) <= 0
        ? Optional.empty()
        : Optional.of(
            c.text(
                "rule.bed-wedge",
                c.say().length(high.minus(low)),
                c.say().length(c.job().wall().bed()),
                c.say().length(thickest, most),
                c.say().most(most)));
  }
}
