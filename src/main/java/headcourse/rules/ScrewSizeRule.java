package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Screws are stout enough and go in far enough. */
final class ScrewSizeRule implements JobRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "screw-size",
        "Screws are #8 at least, stainless or zinc-coated, and go 3/4 in into the sheathing",
        Severity.WARNING,
        "a veneer specification sheet, one maker",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Stream.of(
            Rule.length("screw-shank", "thinnest shank of a screw"),
            Rule.length("screw-embedment", "least that a screw goes into what holds it"))
        .flatMap(List::stream)
        .toList();
  }

  @Override
  public Optional<String> look(RuleContext c) {
    // A number 8 wood screw: 0.060 in + 8 × 0.013 in.
    Length shank = c.length("screw-shank", 0.164, 4);
    Length least = c.length("screw-embedment", 3 / 4.0, 19);
    if (c.job().fastener().shank().compareTo(shank) < 0) {
      return Optional.of(
          c.text(
              "rule.screw-size.shank",
              c.say().length(c.job().fastener().shank(), shank),
              c.say().least(shank)));
    }
    Length in = c.job().fastener().embedment();
    return in.compareTo(least) >= 0
        ? Optional.empty()
        : Optional.of(
            c.text("rule.screw-size.embedment", c.say().length(in, least), c.say().least(least)));
  }
}
