package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Limit;
import java.util.List;

/** Adhered stone weighs only so much per area. */
final class VeneerWeightRule implements Rule {
  private static final double LB_FT2 = Figures.KG_PER_LB / Figures.M2_PER_FT2;

  @Override
  public RuleCard card() {
    return new RuleCard(
        "veneer-weight",
        "Adhered stone weighs at most 15 lb/ft²; by the 2022 edition 30 lb/ft²",
        Severity.ERROR,
        PieceLimits.TMS + "; NCMA TEK 79",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.of("veneer-weight", Kind.MASS_PER_AREA, "most that adhered stone may weigh");
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    double limit = c.number("veneer-weight", 15 * LB_FT2);
    double weight = c.job().stone().thickness().mm() / 1000 * c.job().stone().liftingDensity();
    boolean later = c.job().checks().limits().edition() >= 2022;
    double most = later ? Math.max(limit, 30 * LB_FT2) : limit;
    if (weight <= most * (1 + 1e-9)) {
      return List.of();
    }
    FindingDraft hit =
        FindingDraft.job(
            c.text(
                "rule.veneer-weight",
                c.say().length(c.job().stone().thickness()),
                c.say().massPerAreaOver(weight, most),
                c.say().massPerArea(Limit.MOST, most)));
    return List.of(later ? hit.by(AdheredDesignRule.LATER, SourceStatus.PUBLISHED) : hit);
  }
}
