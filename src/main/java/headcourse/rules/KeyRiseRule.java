package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.HeadSpec;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** The key stands up only so far above its neighbours. */
final class KeyRiseRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "key-rise",
        "The key stands up no more than a third of the depth above its neighbours",
        Severity.WARNING,
        "BIA Technical Note 31, reprinted Masonry Magazine, October 1995",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.number("key-rise", "most that a key stands up, as a fraction of the depth");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    HeadSpec spec = head.layout().opening().head();
    if (spec.key() == null) {
      return Optional.empty();
    }
    Length most = Length.mm(spec.height().mm() * c.number("key-rise", 1 / 3.0));
    if (spec.key().rise().compareTo(most) <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            "rule.key-rise",
            c.say().length(spec.key().rise(), most),
            c.say().length(spec.height()),
            c.say().most(most)));
  }
}
