package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Limit;
import java.util.List;
import java.util.Optional;

/** No adhered piece is too large. */
final class VeneerAreaRule implements PieceRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "veneer-area",
        "No adhered piece has more than 5 ft² of face",
        Severity.ERROR,
        PieceLimits.TMS,
        SourceStatus.FROM_MEMORY,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.of("veneer-area", Kind.AREA, "largest face of an adhered piece");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    double most = c.number("veneer-area", 5 * Figures.M2_PER_FT2);
    return piece.mass().areaM2() <= most * (1 + 1e-9)
        ? Optional.empty()
        : Optional.of(
            c.text(
                "rule.veneer-area",
                c.say().area(Limit.LEAST, piece.mass().areaM2()),
                c.say().area(Limit.MOST, most)));
  }
}
