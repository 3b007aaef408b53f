package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.Side;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** An end bears at least as much as the real lintel behind it would. */
final class BearingLeastRule implements SideRule {
  private static final String IRC = "IRC R703.8.3 (from 2015), R703.7.3 before";

  @Override
  public RuleCard card() {
    return new RuleCard(
        "bearing-least",
        "An end looks as if it bore like a lintel: 100 mm over openings to 1.2 m, 150 mm over wider"
            + " ones; 4 in in inch jobs (IRC R703.8.3 from 2015, R703.7.3 before, from memory)",
        Severity.WARNING,
        "NHBC Standards 2020, 6.1.12",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("bearing-least", "least bearing of an end, whatever the width");
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    List<FindingDraft> hits = SideRule.super.check(c);
    return c.metric() ? hits : hits.stream().map(h -> h.by(IRC, SourceStatus.FROM_MEMORY)).toList();
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Side side) {
    Length wide = c.span(head);
    boolean narrow = wide.compareTo(Length.mm(1200)) <= 0;
    Length own = !c.metric() ? Length.inches(4) : narrow ? Length.mm(100) : Length.mm(150);
    Length least = c.length("bearing-least", own);
    Length bears = Ends.reach(head, side);
    if (bears.compareTo(least) >= 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            Shape.of(head) == Shape.JACK ? "rule.bearing-least.top" : "rule.bearing-least",
            c.say().length(bears, least),
            c.say().span(wide),
            c.say().least(least)));
  }
}
