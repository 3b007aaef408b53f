package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** Where the head's top runs in line with a bed joint, four corners can meet at its ends. */
final class FourCornersRule implements HeadRule {
  /** How near counts as in line. */
  static Length near(RuleContext c) {
    return c.length("four-corners", 1 / 4.0, 6);
  }

  @Override
  public RuleCard card() {
    return new RuleCard(
        "four-corners",
        "Where the head's top runs in line with a bed joint, the joint above breaks over its ends",
        Severity.NOTE,
        "Cyclopedia of Architecture, c. 1907",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length(
        "four-corners", "how near a bed joint counts as in line with the head's top");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    if (Shape.of(head) == Shape.CURVED || c.job().wall().courses().isEmpty()) {
      return Optional.empty();
    }
    Optional<Length> top = Courses.top(head);
    for (Length y : c.job().wall().courses()) {
      if (top.isPresent() && y.minus(top.get()).abs().compareTo(near(c)) <= 0) {
        Length lap = Courses.heightAt(c.job().wall().courses(), y).orElse(SliverRule.width(c));
        return Optional.of(c.text("rule.four-corners", c.say().length(y), c.say().least(lap)));
      }
    }
    return Optional.empty();
  }
}
