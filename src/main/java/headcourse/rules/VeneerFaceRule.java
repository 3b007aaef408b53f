package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** No face dimension of an adhered piece is too long. */
final class VeneerFaceRule implements PieceRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "veneer-face",
        "No face dimension of an adhered piece is over 36 in",
        Severity.ERROR,
        PieceLimits.TMS,
        SourceStatus.FROM_MEMORY,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("veneer-face", "longest face dimension of an adhered piece");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    Length most = c.length("veneer-face", Length.inches(36));
    Length longest = PieceLimits.longest(piece);
    return longest.compareTo(most) <= 0
        ? Optional.empty()
        : Optional.of(
            c.text("rule.veneer-face", c.say().length(longest, most), c.say().most(most)));
  }
}
