package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.PlacedStone;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** No stone has a face too narrow to hold. */
final class FaceLeastRule implements PieceRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "face-least",
        "No face dimension is under 2 in",
        Severity.WARNING,
        "Building Stone Institute guideline",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("face-least", "least face dimension of a stone");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    Length least = c.length("face-least", 2, 50);
    PlacedStone s = piece.stone();
    Length narrowest = s.bottom().min(s.top()).min(s.height());
    return narrowest.compareTo(least) >= 0
        ? Optional.empty()
        : Optional.of(
            c.text("rule.face-least", c.say().length(narrowest, least), c.say().least(least)));
  }
}
