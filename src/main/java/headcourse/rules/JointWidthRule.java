package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.Setting;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Mortar joints of an arch are neither hairs nor gaps. */
final class JointWidthRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "joint-width",
        "Mortar joints in arches are 1/8 to 3/4 in wide",
        Severity.WARNING,
        "Modern Masonry 2016",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Stream.of(
            Rule.length("joint-width-least", "narrowest mortar joint of an arch"),
            Rule.length("joint-width-most", "widest mortar joint of an arch"))
        .flatMap(List::stream)
        .toList();
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    Setting setting = c.job().setting();
    if (setting.dry() || Shape.of(head) == Shape.SOLDIER) {
      return Optional.empty();
    }
    Length least = c.length("joint-width-least", 1 / 8.0, 3);
    Length most = c.length("joint-width-most", 3 / 4.0, 19);
    if (setting.joint().compareTo(least) < 0) {
      return Optional.of(
          c.text(
              "rule.joint-width.least",
              c.say().length(setting.joint(), least),
              c.say().least(least)));
    }
    if (setting.joint().compareTo(most) > 0) {
      return Optional.of(
          c.text(
              "rule.joint-width.most", c.say().length(setting.joint(), most), c.say().most(most)));
    }
    return Optional.empty();
  }
}
