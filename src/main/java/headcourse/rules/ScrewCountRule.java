package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** A long stone has two screws. */
final class ScrewCountRule implements PieceRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "screw-count",
        "A stone over 16 in has two screws",
        Severity.WARNING,
        "a veneer specification sheet, one maker",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("screw-count", "longest stone held by one screw");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    Length most = c.length("screw-count", 16, 400);
    Length longest = PieceLimits.longest(piece);
    int screws = piece.notches().size();
    if (screws >= 2 || longest.compareTo(most) <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            screws == 0 ? "rule.screw-count.none" : "rule.screw-count.one",
            c.say().length(longest, most),
            c.say().most(most)));
  }
}
