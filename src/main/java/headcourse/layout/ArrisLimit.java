package headcourse.layout;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.units.Length;
import headcourse.units.Units;

/** How far a straight arris may stand off a curved soffit. */
public final class ArrisLimit {
  private ArrisLimit() {}

  /**
   * The head's own limit, else the job's, else 1/8 in or 3 mm (common practice, no source).
   *
   * @param job the job
   * @param head what was asked for
   */
  public static Length of(Job job, HeadSpec head) {
    Length general =
        job.checks().limits().values().get("chord-deviation") instanceof Length l
            ? l
            : job.units() == Units.INCH ? Length.inches(1 / 8.0) : Length.mm(3);
    return head.params().length("arris-limit").orElse(general);
  }

  /** Whether the arris is worked to the curve, so that no limit holds. */
  public static boolean worked(HeadSpec head) {
    return head.params().word("arris").orElse("straight").equals("worked");
  }
}
