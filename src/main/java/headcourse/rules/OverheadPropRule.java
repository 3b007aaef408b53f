package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import java.util.List;
import java.util.Optional;

/** Stones over an opening are propped until the mortar holds. */
final class OverheadPropRule implements HeadRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "overhead-prop",
        "Stones that hang over the opening stay propped until the mortar has set for a day",
        Severity.NOTE);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.of("overhead-prop", Kind.MASS, "mass from which a hanging stone is propped");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    double from = c.number("overhead-prop", 0);
    double half = head.layout().halfWidth().mm();
    int hanging = 0;
    double kg = 0;
    for (Piece p : head.pieces()) {
      if (p.liftingKg() >= from && Math.abs(p.centreOfMass().x()) < half) {
        hanging++;
        kg += p.liftingKg();
      }
    }
    if (hanging == 0) {
      return Optional.empty();
    }
    return Optional.of(
        Figures.count(hanging, "stone")
            + ", "
            + c.say().mass(kg)
            + " in all, over the opening: prop them until the mortar has set for a day");
  }
}
