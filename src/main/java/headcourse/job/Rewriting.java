package headcourse.job;

import headcourse.diag.Outcome;
import java.util.List;

/** A job file that can be read again as if other values were written in it. */
public interface Rewriting {
  /**
   * The job that the file makes with some changes.
   *
   * @param changes what is written; of two at one place the later holds
   * @return the job, or what the reader finds wrong with it
   */
  Outcome<Job> with(List<Change> changes);
}
