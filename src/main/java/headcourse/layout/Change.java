package headcourse.layout;

/**
 * A change to the job that makes a head possible.
 *
 * @param path the value to change, as in {@code openings[0].head.stones.max}
 * @param value what to write, as it stands in a job file in the job's units
 * @param reason what it does, one line
 */
public record Change(String path, String value, String reason) {}
