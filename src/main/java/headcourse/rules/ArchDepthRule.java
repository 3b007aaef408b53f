package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** The depth of an arch grows with its span. */
final class ArchDepthRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "arch-depth",
        "A jack arch is at least 4 in and 1 in per foot of span deep, and 8 in; a segmental or"
            + " semicircular one 1 in per foot, and 4 in",
        Severity.WARNING,
        "Modern Masonry 2016 after BIA Technical Note 31",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("arch-depth", "least depth of an arch, whatever its span");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    double feet = c.span(head).inches() / 12;
    double asked =
        switch (Shape.name(head)) {
          case "jack" -> Math.max(8, 4 + feet);
          case "segmental", "semicircular" -> Math.max(4, feet);
          default -> 0;
        };
    if (asked == 0) {
      return Optional.empty();
    }
    Length least = c.length("arch-depth", Length.inches(asked));
    Length depth = head.layout().opening().head().height();
    if (depth.compareTo(least) >= 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            "rule.arch-depth",
            c.text("rule.arch-depth." + Shape.name(head)),
            c.say().length(depth, least),
            c.say().span(c.span(head)),
            c.say().least(least)));
  }
}
