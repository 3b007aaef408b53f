package headcourse.rules;

import headcourse.diag.Severity;

/**
 * Something a rule has to say of the job.
 *
 * @param rule the rule's name
 * @param severity how grave
 * @param opening mark of the opening, or null for the whole job
 * @param stone full mark of the stone, or null
 * @param message in the mason's words
 * @param source where the rule comes from
 * @param status whether that source was seen, is from memory, or is common practice
 * @param accepted the reason it was accepted, or null
 */
public record Finding(
    String rule,
    Severity severity,
    String opening,
    String stone,
    String message,
    String source,
    SourceStatus status,
    String accepted) {
  /** How well a rule's source is known. */
  public enum SourceStatus {
    /** Seen on a published page. */
    PUBLISHED("published"),
    /** From memory of the named source. */
    FROM_MEMORY("from memory"),
    /** Common practice, no source. */
    PRACTICE("common practice, no source"),
    /** Worked out here. */
    CALCULATED("calculated");

    private final String words;

    SourceStatus(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** Whether it stands as an error. */
  public boolean standing() {
    return severity == Severity.ERROR && accepted == null;
  }
}
