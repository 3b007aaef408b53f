package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.stock.StockPlan;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** No width near the one aimed at is cut from fewer blanks. */
final class OtherWidthRule implements JobRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "other-width", "No width near the one aimed at would save a blank", Severity.NOTE);
  }

  @Override
  public Optional<String> look(RuleContext c) {
    List<StockPlan.Saving> savings = c.stock().savings();
    return savings.isEmpty()
        ? Optional.empty()
        : Optional.of(savings.stream().map(s -> said(c, s)).collect(Collectors.joining("; ")));
  }

  private static String said(RuleContext c, StockPlan.Saving s) {
    return c.text(
        "rule.other-width",
        s.opening(),
        c.say().length(s.width()),
        c.say().length(s.instead()),
        c.count(c.stock().corners() ? "rule.corner-" : "rule.blank-", s.blanks()),
        c.stock().blanks().size());
  }
}
