package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;

/**
 * What a rule found, before it becomes a finding.
 *
 * @param opening mark of the opening, or null for the whole job
 * @param stone full mark of the stone, or null
 * @param text what is to be said, without the place
 * @param severity how grave, or null for the rule's own
 * @param source where this case comes from, or null for the rule's own
 * @param status how well that is known, or null for the rule's own
 */
record Hit(
    String opening,
    String stone,
    String text,
    Severity severity,
    String source,
    SourceStatus status) {
  static Hit job(String text) {
    return new Hit(null, null, text, null, null, null);
  }

  static Hit head(HeadWork head, String text) {
    return new Hit(head.layout().opening().mark(), null, text, null, null, null);
  }

  static Hit stone(HeadWork head, Piece piece, String text) {
    return new Hit(head.layout().opening().mark(), piece.mark(), text, null, null, null);
  }

  Hit as(Severity other) {
    return new Hit(opening, stone, text, other, source, status);
  }

  Hit by(String otherSource, SourceStatus otherStatus) {
    return new Hit(opening, stone, text, severity, otherSource, otherStatus);
  }

  /** The finding: place first, then what is to be said, and whom to ask where a code is behind. */
  Finding finding(RuleCard card, String accepted) {
    String place = stone != null ? stone + ": " : opening != null ? opening + ": " : "";
    return new Finding(
        card.name(),
        severity != null ? severity : card.severity(),
        opening,
        stone,
        place + text + (card.code() ? "; check with the local code" : ""),
        source != null ? source : card.source(),
        status != null ? status : card.status(),
        accepted);
  }
}
