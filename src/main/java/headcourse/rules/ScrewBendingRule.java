package headcourse.rules;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Limit;
import java.util.Optional;

/** The screws alone would carry the stone while its mortar is green. */
final class ScrewBendingRule implements NotchRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "screw-bending",
        "While the mortar is green a stone's weight bends no screw: share of the weight times"
            + " (bed + scratch coat + sheathing)/sin slant under the yield moment F D³/6",
        Severity.WARNING,
        "NDS, bending yield 90 and 80 ksi",
        SourceStatus.FROM_MEMORY,
        false);
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    if (notch.screw() == null) {
      return Optional.empty();
    }
    AnchorLoads loads = AnchorLoads.of(c.job(), piece, notch);
    return loads.bends()
        ? Optional.of(
            c.text(
                "rule.screw-bending",
                c.say().moment(Limit.LEAST, loads.momentNmm()),
                c.say().moment(Limit.MOST, loads.yieldNmm())))
        : Optional.empty();
  }
}
