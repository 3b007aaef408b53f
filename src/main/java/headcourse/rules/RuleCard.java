package headcourse.rules;

import headcourse.diag.Severity;
import headcourse.rules.Finding.SourceStatus;

/**
 * What a rule is, for a list of them all.
 *
 * @param name the word in {@code accept:}, lower-case with hyphens
 * @param what what it asks, one line
 * @param severity how grave its findings are unless one says otherwise
 * @param source where it comes from
 * @param status how well that source is known
 * @param code whether a building or safety code is behind it, so that the local one must be asked
 */
public record RuleCard(
    String name, String what, Severity severity, String source, SourceStatus status, boolean code) {
  static RuleCard practice(String name, String what, Severity severity) {
    return new RuleCard(
        name, what, severity, SourceStatus.PRACTICE.words(), SourceStatus.PRACTICE, false);
  }
}
