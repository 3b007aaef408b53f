package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Limit;
import java.util.ArrayList;
import java.util.List;

/** What the 2022 edition asks of all adhered stone, whatever it weighs. */
final class AdheredDesignRule implements Rule {
  /** Where the rules of the 2022 edition are known from. */
  static final String LATER = "articles on TMS 402-22, second hand";

  @Override
  public RuleCard card() {
    return new RuleCard(
        "adhered-design",
        "By the 2022 edition all adhered stone is set in polymer-modified mortar, and a piece over"
            + " 360 in² needs a designer",
        Severity.ERROR,
        LATER,
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.of(
        "adhered-design", Kind.AREA, "largest face that needs no designer, 2022 edition");
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    if (c.job().checks().limits().edition() < 2022) {
      return List.of();
    }
    double most = c.number("adhered-design", 360 * Figures.M2_PER_IN2);
    String size = c.say().area(Limit.MOST, most);
    List<FindingDraft> hits = new ArrayList<>();
    for (HeadWork head : c.heads()) {
      for (Piece p : head.pieces()) {
        if (p.mass().areaM2() > most * (1 + 1e-9)) {
          String has = c.say().area(Limit.LEAST, p.mass().areaM2());
          hits.add(FindingDraft.stone(head, p, c.text("rule.adhered-design.large", has, size)));
        }
      }
    }
    hits.add(FindingDraft.job(c.text("rule.adhered-design.polymer", size)).as(Severity.NOTE));
    return hits;
  }
}
