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
    Length least = head.layout().opening().head().bearing().min();
    boolean bears = Ends.springs(c, head, side) || s.bearingLeast().compareTo(least) >= 0;
    if (bears && s.jambStillClear()) {
      return Optional.empty();
    }
    String stones = c.count("rule.stone-", s.stones());
    String worst = c.say().length(s.worst());
    String likely = c.say().length(s.likely());
    return Optional.of(
        bears
            ? c.text(
                "rule.stack-up.jamb",
                c.say().length(head.layout().opening().head().clear()),
                stones,
                worst,
                likely)
            : c.text(
                "rule.stack-up.bearing",
                c.say().length(s.bearingLeast(), least),
                c.say().length(least),
                stones,
                worst,
                likely,
                c.say().length(least.minus(s.bearingLeast()))));
  }
}
