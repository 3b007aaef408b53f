package headcourse.job;

/**
 * A finding that the mason takes on himself.
 *
 * @param path where it stands in the job
 * @param rule the rule's name
 * @param opening only for this opening, or empty for all
 * @param reason why; printed
 */
public record Accepted(String path, String rule, String opening, String reason) {}
