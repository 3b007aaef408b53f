package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** A dead level jack arch looks as if it sagged. */
final class JackCamberRule implements HeadRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "jack-camber",
        "The soffit of a jack arch is cambered 1/8 in per foot of span, or it looks as if it sagged",
        Severity.NOTE,
        "UK bricklaying manual, 1927",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("jack-camber-from", "narrowest jack arch for which a camber is asked");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    Length span = c.span(head);
    Object camber = head.layout().opening().head().params().values().get("camber");
    boolean cambered = camber != null && !camber.equals("none") && !camber.equals(Length.ZERO);
    if (Shape.of(head) != Shape.JACK
        || cambered
        || span.compareTo(c.length("jack-camber-from", Length.ZERO)) < 0) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            "rule.jack-camber",
            c.say().span(span),
            c.say().length(Length.inches(span.inches() / 96))));
  }
}
