package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Limit;
import java.util.Optional;

/** What the weakest screw of a head holds, for the engineer. */
final class ScrewWithdrawalRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "screw-withdrawal",
        "For the engineer, no design value: withdrawal 2850 G² D lb per inch of thread in wood",
        Severity.NOTE,
        "NDS; an engineering reference page; a handbook table",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    AnchorLoads least = null;
    double heaviest = 0;
    for (Piece p : head.pieces()) {
      for (Notch n : p.notches()) {
        AnchorLoads loads = n.screw() == null ? null : AnchorLoads.of(c.job(), p, n);
        if (loads == null || Double.isNaN(loads.withdrawalN())) {
          continue;
        }
        heaviest = Math.max(heaviest, loads.weightN());
        if (least == null || loads.withdrawalN() < least.withdrawalN()) {
          least = loads;
        }
      }
    }
    return least == null
        ? Optional.empty()
        : Optional.of(
            c.text(
                "rule.screw-withdrawal",
                c.say().force(Limit.MOST, least.withdrawalN()),
                c.say().force(Limit.LEAST, heaviest)));
  }
}
