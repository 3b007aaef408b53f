package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** A rule of the tests' own, with words and a threshold of its own. */
public final class ChalkLineRule implements HeadRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice("chalk-line", "A wide head is chalked on the wall", Severity.ERROR);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("chalk-line", "widest opening whose head needs no chalk line");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    Length width = head.layout().opening().width();
    return width.compareTo(c.length("chalk-line", 36, 900)) > 0
        ? Optional.of(c.text("added.chalk-line", c.say().length(width, width)))
        : Optional.empty();
  }
}
