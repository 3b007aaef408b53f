package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.job.Measured;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Widths measured at the head, half way up and at the sill tell of the same jambs. */
final class WidthsAgreeRule implements HeadRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "widths-agree",
        "Widths measured at head, middle and sill differ by what the jambs lean, to 1/2 in (12 mm)",
        Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("widths-agree", "how far measured widths may differ");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head) {
    Measured m = head.layout().opening().measured();
    if (m == null) {
      return Optional.empty();
    }
    // Each as wide as it would be at the soffit, were the jambs to lean as measured.
    List<Length> widths = new ArrayList<>();
    Length lean = orZero(m.plumbLeft()).plus(orZero(m.plumbRight()));
    add(widths, m.widthHead(), Length.ZERO);
    add(widths, m.widthMiddle(), lean.half());
    add(widths, m.widthSill(), lean);
    if (widths.size() < 2) {
      return Optional.empty();
    }
    Length least = widths.stream().reduce(Length::min).orElseThrow();
    Length off = widths.stream().reduce(Length::max).orElseThrow().minus(least);
    Length most = c.length("widths-agree", 0.5, 12);
    return off.compareTo(most) <= 0
        ? Optional.empty()
        : Optional.of(c.text("rule.widths-agree", c.say().length(off, most), c.say().most(most)));
  }

  private static void add(List<Length> widths, Length measured, Length lean) {
    if (measured != null) {
      widths.add(measured.plus(lean));
    }
  }

  private static Length orZero(Length length) {
    return length == null ? Length.ZERO : length;
  }
}
