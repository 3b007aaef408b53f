package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.Stock;
import headcourse.stock.StockPlan;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** Every stone can be cut from a blank in the yard. */
final class NoBlankRule implements Rule {
  @Override
  public RuleCard card() {
    return RuleCard.practice("no-blank", "Every stone fits a blank in the yard", Severity.WARNING);
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    List<FindingDraft> hits = new ArrayList<>();
    for (StockPlan.Unfit unfit : c.stock().unfit()) {
      for (HeadWork head : c.heads()) {
        for (Piece p : head.pieces()) {
          if (p.mark().equals(unfit.stone())) {
            hits.add(FindingDraft.stone(head, p, text(c.of(head), unfit)));
          }
        }
      }
    }
    return hits;
  }

  private static String text(RuleContext c, StockPlan.Unfit u) {
    String size =
        c.text(
            u.returnLeg().isPositive() ? "rule.no-blank.size-corner" : "rule.no-blank.size-flat",
            c.say().length(u.length()),
            c.say().length(u.face()),
            c.say().length(u.returnLeg()));
    String key = u.part() == StockPlan.Part.SOFFIT ? "rule.no-blank.soffit" : "rule.no-blank";
    return c.text(key, reason(c, u.reason()), size);
  }

  private static String reason(RuleContext c, StockPlan.Reason r) {
    // The yard's sizes are said to the job's grid, as the plan took them.
    LengthFormat format = new LengthFormat(c.job().units(), c.job().grid());
    String kind = r.kind() == Stock.Kind.CORNER ? "corner" : "flat";
    String what = c.text("rule.no-blank." + kind);
    return switch (r.why()) {
      case NO_KIND -> c.text("rule.no-blank.no-kind", what);
      case NO_THICKNESS ->
          c.text("rule.no-blank.no-thickness", what, format.plainWithUnit(r.thickness()));
      case SHORT ->
          c.text(
              "rule.no-blank.short",
              what,
              r.shortages().stream()
                  .map(
                      s ->
                          c.text(
                              "rule.no-blank." + s.measure().word() + "-" + kind,
                              format.plainWithUnit(s.need()),
                              format.plainWithUnit(s.longest())))
                  .reduce((a, b) -> c.text("rule.no-blank.or", a, b))
                  .orElseThrow());
      case TAKEN -> c.text("rule.no-blank.taken", what);
      case NOT_AT_ONCE -> c.text("rule.no-blank.not-at-once", what);
    };
  }
}
