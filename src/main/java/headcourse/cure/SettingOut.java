package headcourse.cure;

import headcourse.job.Job;
import headcourse.layout.Solution;

/** Sets out one opening of a job, just as when the job is drawn. */
public interface SettingOut {
  /** What comes of an opening, by its number in the job. */
  Solution of(Job job, int opening);
}
