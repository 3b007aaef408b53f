package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;
import java.util.Optional;

/** Cutting stone raises dust that kills. */
final class SilicaRule implements JobRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "silica",
        "Stone is cut wet, or with shroud and collector, against respirable silica",
        Severity.NOTE,
        "OSHA 29 CFR 1926.1153 Table 1; EH40",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public Optional<String> look(RuleContext c) {
    boolean saw = false;
    boolean grinder = false;
    for (HeadWork head : c.heads()) {
      for (Piece p : head.pieces()) {
        saw |= !p.saw().isEmpty();
        grinder |= !p.notches().isEmpty();
      }
    }
    if (!saw && !grinder) {
      return Optional.empty();
    }
    String tasks =
        (saw ? "wet saw with built-in water" : "")
            + (saw && grinder ? "; " : "")
            + (grinder
                ? "hand grinder with shroud and collector, or water, and a respirator (APF 10) for"
                    + " more than 4 hours indoors"
                : "");
    return Optional.of(
        "respirable silica: "
            + tasks
            + "; limit "
            + (c.metric() ? "0.05 mg/m³ (UK 0.1)" : "50 µg/m³, action level 25"));
  }
}
