package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;
import java.util.ArrayList;
import java.util.List;
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
    List<String> tasks = new ArrayList<>();
    if (saw) {
      tasks.add(c.text("rule.silica.saw"));
    }
    if (grinder) {
      tasks.add(c.text("rule.silica.grinder"));
    }
    String limit = c.text(c.metric() ? "rule.silica.limit-metric" : "rule.silica.limit-inch");
    return Optional.of(c.text("rule.silica", String.join("; ", tasks), limit));
  }
}
