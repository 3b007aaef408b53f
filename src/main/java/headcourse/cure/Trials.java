package headcourse.cure;

import headcourse.diag.Outcome;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.job.Rewriting;
import headcourse.layout.HeadLayout;
import headcourse.layout.Solution;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes changes into a job file and sets an opening out, as long as there are steps left. */
final class Trials {
  /** What reading a job takes, and as much more for every ten openings of it. */
  private static final long READING = 1_000;

  private final Rewriting file;
  private final int opening;
  private final SettingOut setting;
  private final long reading;
  private final Map<Map<String, String>, Solution> known = new HashMap<>();
  private long effort;
  private long most;

  /**
   * Trials of one opening.
   *
   * @param most how many steps they may take
   */
  Trials(Job job, int opening, SettingOut setting, long most) {
    this.file = job.spans().rewriting();
    this.opening = opening;
    this.setting = setting;
    this.reading = READING * (1 + job.openings().size() / 10);
    this.most = most;
  }

  boolean tired() {
    return effort > most;
  }

  /** Allows so many steps more from here on. */
  void more(long steps) {
    most = effort + steps;
  }

  long effort() {
    return effort;
  }

  /** What comes of some changes; null where the reader refuses them, or no steps are left. */
  Solution of(List<Change> changes) {
    Map<String, String> written = new TreeMap<>();
    changes.forEach(c -> written.put(c.path(), String.valueOf(c.value())));
    if (known.containsKey(written) || tired()) {
      return known.get(written);
    }
    effort += reading;
    Outcome<Job> read = file.with(changes);
    Solution solution = read.value().map(job -> setting.of(job, opening)).orElse(null);
    effort += solution == null ? 0 : solution.effort();
    known.put(written, solution);
    return solution;
  }

  /** The head that comes of some changes, or null. */
  HeadLayout head(List<Change> changes) {
    return of(changes) instanceof Solution.Solved s ? s.head() : null;
  }
}
