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
    Length near = c.length("four-corners", 1 / 4.0, 6);
    return Courses.top(head)
        .flatMap(
            top ->
                c.job().wall().courses().stream()
                    .filter(y -> y.minus(top).abs().compareTo(near) <= 0)
                    .findFirst())
        .map(
            y ->
                "the top of the end stones runs in line with the bed joint at "
                    + c.say().length(y)
                    + ": four corners meet if a joint above stands over an end; break it by "
                    + c.say()
                        .length(
                            Courses.heightAt(c.job().wall().courses(), y)
                                .orElse(SliverRule.width(c))));
  }
}
