package headcourse.job;

/**
 * A value to be written into a job file.
 *
 * @param path where, as in {@code openings[0].head.stones.max}
 * @param value what to write there, as it stands in a job file in the job's units; null to leave
 *     the key out
 * @param reason what it does, one line
 */
public record Change(String path, String value, String reason) {
  /** Whether the key is to be left out. */
  public boolean leavesOut() {
    return value == null;
  }
}
