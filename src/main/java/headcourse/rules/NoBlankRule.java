package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.stock.StockPlan;
import java.util.ArrayList;
import java.util.List;

/** Every stone can be cut from a blank in the yard. */
final class NoBlankRule implements Rule {
  @Override
  public RuleCard card() {
    return RuleCard.practice("no-blank", "Every stone fits a blank in the yard", Severity.WARNING);
  }

  @Override
  public List<Hit> check(RuleContext c) {
    List<Hit> hits = new ArrayList<>();
    for (StockPlan.Unfit unfit : c.stock().unfit()) {
      for (HeadWork head : c.heads()) {
        for (Piece p : head.pieces()) {
          if (p.mark().equals(unfit.stone())) {
            hits.add(Hit.stone(head, p, text(c, unfit)));
          }
        }
      }
    }
    return hits;
  }

  private static String text(RuleContext c, StockPlan.Unfit u) {
    String size =
        c.say().length(u.length())
            + " × "
            + c.say().length(u.face())
            + (u.returnLeg().isPositive()
                ? " with a return of " + c.say().length(u.returnLeg())
                : "");
    return "fits no blank in the yard (" + u.reason() + "); one of " + size + " would do";
  }
}
