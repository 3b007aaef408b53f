package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.Side;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** The end laps the jamb by a course height, as a wall's joints lap each other. */
final class StackedJointsRule implements SideRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "stacked-joints",
        "The end of a head laps the jamb by the height of a course, so that joints don't stack",
        Severity.NOTE,
        "Cyclopedia of Architecture, c. 1907",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.number("stacked-joints", "least lap as a fraction of the course height");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Side side) {
    if (Shape.of(head) == Shape.CURVED) {
      return Optional.empty();
    }
    double share = c.number("stacked-joints", 1);
    Length bears = Ends.reach(head, side);
    return Courses.heightAt(c.job().wall().courses(), Length.ZERO)
        .map(height -> Length.mm(height.mm() * share))
        .filter(lap -> bears.compareTo(lap) < 0)
        .map(lap -> c.text("rule.stacked-joints", c.say().length(bears, lap), c.say().least(lap)));
  }
}
