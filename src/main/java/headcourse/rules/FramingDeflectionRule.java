package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import headcourse.units.Limit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What holds the veneer bends but little. */
final class FramingDeflectionRule implements HeadRule {
  /** The clause's number by edition; the cap stands in the masonry code alone. */
  private static final String SOURCE =
      "IRC R703.7.2 (2006 to 2012), R703.8.2 (from 2015); MSJC 1.10.1, the cap of 0.3 in";

  /** What framing may bend of its span at most, as in 600. */
  static double part(RuleContext c) {
    return c.number("framing-deflection", 600);
  }

  @Override
  public RuleCard card() {
    return new RuleCard(
        "framing-deflection",
        "Framing that carries veneer bends no more than a 600th of its span, and 0.3 in at most",
        Severity.NOTE,
        SOURCE,
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Stream.of(
            Rule.number(
                "framing-deflection", "span over the most that framing may bend, as in 600"),
            Rule.length("framing-deflection-most", "most that framing may bend on any span"))
        .flatMap(List::stream)
        .toList();
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    if (!c.job().wall().framing().isPositive()) {
      return Optional.empty();
    }
    Length share = Length.mm(c.span(head).mm() / part(c));
    Length cap = c.length("framing-deflection-most", Length.inches(0.3));
    boolean capped = share.compareTo(cap) > 0;
    return Optional.of(
        c.text(
            capped ? "rule.framing-deflection.capped" : "rule.framing-deflection",
            c.say().span(c.span(head)),
            Figures.decimal(part(c), 0),
            c.say().mostOnGrid(share.min(cap)),
            c.say().thin(Limit.MOST, cap)));
  }
}
