package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;
import java.util.Optional;

/** How stone over one's head is stuck to it. */
final class BondRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "overhead-bond",
        "On soffits and overhead the mortar has an admixture and covers the whole back; bond in"
            + " shear is at least 50 lb/in²",
        Severity.NOTE,
        "summary of the Building Stone Institute guideline; NCMA TEK 79",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    int overhead = (int) head.pieces().stream().filter(Piece::coversSoffit).count();
    if (overhead == 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            "rule.overhead-bond",
            c.count("rule.stone-", overhead),
            c.metric() ? "0.345 N/mm²" : "50 lb/in²"));
  }
}
