package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.Opening;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** High work needs a platform with guards. */
final class ScaffoldRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "scaffold",
        "Work over 6 ft up is guarded against falls, and a scaffold from 10 ft",
        Severity.NOTE,
        "29 CFR 1926 subparts L and M, the second from memory",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("scaffold-reach", "how high a mason works above what he stands on");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    Opening opening = head.layout().opening();
    if (opening.height() == null) {
      return Optional.empty();
    }
    Length reach = c.length("scaffold-reach", 72, 1830);
    Length top = opening.height().plus(opening.head().height());
    Length stand = top.minus(reach);
    if (stand.compareTo(c.inUnits(72, 1830)) < 0) {
      return Optional.empty();
    }
    boolean scaffold = stand.compareTo(c.inUnits(120, 3050)) >= 0;
    return Optional.of(
        c.text(
            scaffold ? "rule.scaffold.scaffold" : "rule.scaffold.guard",
            c.say().span(top),
            c.say().span(stand)));
  }
}
