package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** A corner's return is deep enough to hold and to look real. */
final class ReturnLeastRule implements PieceRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "return-least",
        "The return of a corner is at least 3 in deep",
        Severity.WARNING,
        "Building Stone Institute guideline",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("return-least", "least depth of a return");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    Length least = c.length("return-least", 3, 75);
    Length deep = piece.leg().depth();
    return !deep.isPositive() || deep.compareTo(least) >= 0
        ? Optional.empty()
        : Optional.of(
            c.text("rule.return-least", c.say().length(deep, least), c.say().least(least)));
  }
}
