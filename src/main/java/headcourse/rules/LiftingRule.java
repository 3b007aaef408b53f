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

/** Two people lift a heavy stone. */
final class LiftingRule implements PieceRule {
  /** From this mass two people lift, kg: 50 lb, and 20 kg in metric jobs. */
  static double limit(RuleContext c) {
    return c.number("lifting", c.metric() ? 20 : 50 * Figures.KG_PER_LB);
  }

  @Override
  public RuleCard card() {
    return new RuleCard(
        "lifting",
        "From 50 lb, and from 20 kg in metric jobs, two people lift a stone",
        Severity.NOTE,
        "HSE INDG143; NIOSH 94-110",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.of("lifting", Kind.MASS, "mass from which two people lift a stone");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    double from = limit(c);
    return piece.hangingKg() < from * (1 - 1e-9)
        ? Optional.empty()
        : Optional.of(
            c.text(
                "rule.lifting", c.say().mass(piece.hangingKg()), c.say().mass(Limit.MOST, from)));
  }
}
