package headcourse.statics;

import headcourse.job.Job;

/** The greatest thrust of a head read as solid, times its weight. */
public final class ThrustLimit {
  /** The key under {@code limits:}. */
  public static final String KEY = "thrust";

  /**
   * What stands for it where the job says nothing: an assumption of this program. A flat head
   * pushes so much when it is twenty times as wide as deep ({@code L / 8d}); the usual rules for
   * depth (4 in and 1 in a foot) keep real ones under half of that.
   */
  public static final double USUAL = 2.5;

  private ThrustLimit() {}

  /** A job's. */
  public static double of(Job job) {
    return job.checks().limits().values().get(KEY) instanceof Double d ? d : USUAL;
  }
}
