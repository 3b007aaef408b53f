package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;
import headcourse.text.Words;

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
record FindingDraft(
    String opening,
    String stone,
    String text,
    Severity severity,
    String source,
    SourceStatus status) {
  static FindingDraft job(String text) {
    return new FindingDraft(null, null, text, null, null, null);
  }

  static FindingDraft head(HeadWork head, String text) {
    return new FindingDraft(head.layout().opening().mark(), null, text, null, null, null);
  }

  static FindingDraft stone(HeadWork head, Piece piece, String text) {
    return new FindingDraft(head.layout().opening().mark(), piece.mark(), text, null, null, null);
  }

  FindingDraft as(Severity other) {
    return new FindingDraft(opening, stone, text, other, source, status);
  }

  FindingDraft by(String otherSource, SourceStatus otherStatus) {
    return new FindingDraft(opening, stone, text, severity, otherSource, otherStatus);
  }

  /** What is said in a language: whom to ask where a code is behind, and the source. */
  FindingDraft said(RuleCard card, Words words) {
    return new FindingDraft(
        opening,
        stone,
        card.code() ? words.say("rule.local-code", text) : text,
        severity,
        SourceWords.say(source != null ? source : card.source(), words),
        status);
  }

  /** The same said in a second language too. */
  FindingDraft and(FindingDraft other) {
    return new FindingDraft(
        opening, stone, both(text, other.text), severity, both(source, other.source), status);
  }

  private static String both(String a, String b) {
    return a.equals(b) ? a : a + " / " + b;
  }

  /** The finding, place first; of a hit that has been said. */
  Finding finding(RuleCard card, String accepted) {
    String place = stone != null ? stone + ": " : opening != null ? opening + ": " : "";
    return new Finding(
        card.name(),
        severity != null ? severity : card.severity(),
        opening,
        stone,
        place + text,
        source,
        status != null ? status : card.status(),
        accepted);
  }
}
