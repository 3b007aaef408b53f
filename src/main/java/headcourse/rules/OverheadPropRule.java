package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.Side;
import java.util.List;
import java.util.Optional;

/** Stones over an opening are propped until the mortar holds. */
final class OverheadPropRule implements HeadRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "overhead-prop",
        "Stones that hang over the opening stay propped until the mortar has set: 7 days are published"
            + " for centring, a day is common practice",
        Severity.NOTE);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.of("overhead-prop", Kind.MASS, "mass from which a hanging stone is propped");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    double from = c.number("overhead-prop", 0);
    int hanging = 0;
    double kg = 0;
    for (Piece p : head.pieces()) {
      if (p.hangingKg() >= from && over(head, p)) {
        hanging++;
        kg += p.hangingKg();
      }
    }
    if (hanging == 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text("rule.overhead-prop", c.count("rule.stone-", hanging), c.say().mass(kg)));
  }

  /** Whether its weight is over the opening rather than on the wall. */
  private static boolean over(HeadWork head, Piece p) {
    double x = p.mass().centre().x();
    return Math.abs(x) < head.layout().jamb(x < 0 ? Side.LEFT : Side.RIGHT).mm();
  }
}
