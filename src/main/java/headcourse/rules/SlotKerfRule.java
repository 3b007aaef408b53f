package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.job.Fastener;
import headcourse.units.Length;
import java.util.List;

/** The slot lets the shank through and stops the head. */
final class SlotKerfRule implements Rule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "slot-kerf",
        "The grinder's kerf lets the shank through (warning) and stops the head (error)",
        Severity.ERROR);
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    Fastener f = c.job().fastener();
    Length kerf = c.job().tools().grinder().kerf();
    if (kerf.compareTo(f.head()) >= 0) {
      return List.of(FindingDraft.job(text(c, "rule.slot-kerf.head", kerf, f.head())));
    }
    return kerf.compareTo(f.shank()) > 0
        ? List.of()
        : List.of(
            FindingDraft.job(text(c, "rule.slot-kerf.shank", kerf, f.shank()))
                .as(Severity.WARNING));
  }

  private static String text(RuleContext c, String key, Length kerf, Length other) {
    return c.text(key, c.say().length(kerf, other), c.say().length(other));
  }
}
