package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.StackUp;
import headcourse.diag.Severity;
import headcourse.layout.Side;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.Optional;

/** Small errors added up don't spoil an end. */
final class StackUpRule implements SideRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "stack-up",
        "With every cut and joint off by its tolerance the ends still bear and joints stay clear",
        Severity.WARNING,
        "worked out from the job's tolerances",
        SourceStatus.CALCULATED,
        false);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Side side) {
    Optional<StackUp> found = head.stackUps().stream().filter(s -> s.side() == side).findFirst();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    StackUp s = found.get();
    StackUp.Printed p = s.on(c.say().step());
    String stones = c.count("rule.stone-", s.stones());
    String likely = c.say().length(s.drift().likely());
    Length least = head.layout().opening().head().bearing().min();
    if (s.shortfall().least().isPositive()) {
      return Optional.of(
          c.text(
              "rule.stack-up.bearing",
              c.say().length(p.least(), least),
              c.say().length(least),
              c.say().length(p.bearing()),
              stones,
              c.say().length(p.inward()),
              likely,
              c.say().length(least.minus(p.least()))));
    }
    Length over = s.shortfall().greatest();
    if (s.jambStillClear() && over.isZero()) {
      return Optional.empty();
    }
    String inward = c.say().length(p.inward());
    String outward = c.say().length(p.outward());
    return Optional.of(
        s.jambStillClear()
            ? c.text("rule.stack-up.over", c.say().least(over), stones, outward, likely)
            : c.text(
                "rule.stack-up.jamb",
                c.say().length(head.layout().opening().head().clear()),
                stones,
                inward,
                outward,
                likely));
  }
}
