package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.stock.StockPlan;
import headcourse.units.Limit;
import java.util.List;
import java.util.Optional;

/** Not too much of the blanks ends on the heap. */
final class WasteRule implements JobRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "waste", "No more than a quarter of the blanks used is left over", Severity.NOTE);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.number("waste", "most that may be left over, as a fraction of the blanks' length");
  }

  @Override
  public Optional<String> look(RuleContext c) {
    double most = c.number("waste", 0.25);
    List<StockPlan.CutBlank> blanks = c.stock().blanks();
    double used = 0;
    double left = 0;
    for (StockPlan.CutBlank blank : blanks) {
      used += blank.length().mm();
      left += blank.waste().mm();
    }
    return left <= most * used + 1e-6
        ? Optional.empty()
        : Optional.of(
            c.text(
                "rule.waste",
                Figures.percent(left / used),
                c.count("rule.blank-", blanks.size()),
                Figures.percent(Limit.MOST, most)));
  }
}
