package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import java.util.ArrayList;
import java.util.List;

/** Adhered stone weighs only so much per area. */
final class VeneerWeightRule implements Rule {
  private static final double LB_FT2 = Figures.KG_PER_LB / Figures.M2_PER_FT2;
  private static final double SMALL_M2 = 360 * Figures.M2_PER_IN2;
  private static final String LATER = "articles on TMS 402-22, second hand";

  @Override
  public RuleCard card() {
    return new RuleCard(
        "veneer-weight",
        "Adhered stone weighs at most 15 lb/ft²; by the 2022 edition 30 lb/ft² in pieces to 360 in²"
            + " with polymer-modified mortar",
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
  public List<Hit> check(RuleContext c) {
    double limit = c.number("veneer-weight", 15 * LB_FT2);
    double weight = c.job().stone().thickness().mm() / 1000 * c.job().stone().liftingDensity();
    if (weight <= limit * (1 + 1e-9)) {
      return List.of();
    }
    String thick = c.say().length(c.job().stone().thickness());
    String weighs = c.say().massPerArea(weight);
    if (c.job().limits().edition() < 2022) {
      return List.of(
          Hit.job(c.text("rule.veneer-weight.most", thick, weighs, c.say().massPerArea(limit))));
    }
    double later = Math.max(limit, 30 * LB_FT2);
    if (weight > later * (1 + 1e-9)) {
      return List.of(
          Hit.job(c.text("rule.veneer-weight.most", thick, weighs, c.say().massPerArea(later)))
              .by(LATER, SourceStatus.PUBLISHED));
    }
    return heavy(c, thick, weighs, limit);
  }

  private static List<Hit> heavy(RuleContext c, String thick, String weighs, double limit) {
    List<Hit> hits = new ArrayList<>();
    for (HeadWork head : c.heads()) {
      for (Piece p : head.pieces()) {
        if (p.areaM2() > SMALL_M2 * (1 + 1e-9)) {
          hits.add(
              Hit.stone(
                      head,
                      p,
                      c.text(
                          "rule.veneer-weight.large",
                          c.say().area(p.areaM2()),
                          weighs,
                          c.say().massPerArea(limit),
                          c.say().area(SMALL_M2)))
                  .by(LATER, SourceStatus.PUBLISHED));
        }
      }
    }
    hits.add(
        Hit.job(
                c.text(
                    "rule.veneer-weight.polymer",
                    thick,
                    weighs,
                    c.say().massPerArea(limit),
                    c.say().area(SMALL_M2)))
            .as(Severity.NOTE)
            .by(LATER, SourceStatus.PUBLISHED));
    return hits;
  }
}
