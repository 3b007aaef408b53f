package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.HeadSpec;
import headcourse.job.Opening;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * A dry head closes at its top when what carries it bends.
 *
 * <p>What bends by δ = L/k turns at each end by 4 δ/L where it bends as a parabola, and by 3.2 δ/L
 * where it is a simple beam under an even load (q L³ / 24 EI over 5 q L⁴ / 384 EI). Stones that
 * stand square to it close by both turns times their height h: 8 h/k, or 6.4 h/k, whatever the
 * span.
 */
final class DryClosingRule implements HeadRule {
  private static final double BEAM = 6.4;
  private static final double PARABOLA = 8;

  @Override
  public RuleCard card() {
    return new RuleCard(
        "dry-closing",
        "What carries a dry head bends before its stones go up, or a soft joint takes up what it"
            + " closes by",
        Severity.NOTE,
        "worked out from the height",
        SourceStatus.CALCULATED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("dry-closing", "lowest dry head of which it is said");
  }

  // By what the lintel's designer says, or else by the limit for what carries veneer.
  private static double part(RuleContext c, HeadWork head) {
    Opening opening = head.layout().opening();
    Length after = c.job().info().contract().of(opening).lintel().after();
    return after == null || after.isZero()
        ? FramingDeflectionRule.part(c)
        : opening.width().mm() / after.mm();
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    HeadSpec spec = head.layout().opening().head();
    Length high = spec.height();
    if (!c.job().setting().dry()
        || Shape.of(head) == Shape.CURVED
        || high.compareTo(c.length("dry-closing", Length.ZERO)) < 0) {
      return Optional.empty();
    }
    double part = part(c, head);
    Length beam = Length.mm(BEAM * high.mm() / part);
    Length parabola = Length.mm(PARABOLA * high.mm() / part);
    return Optional.of(
        c.text(
            "rule.dry-closing",
            Figures.decimal(part, 0),
            c.say().length(high),
            c.say().thinNear(beam),
            c.say().thinNear(parabola),
            c.say().least(parabola)));
  }
}
