package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.job.Job;
import headcourse.stock.StockPlan;
import headcourse.units.Angle;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.List;

/**
 * What rules look at.
 *
 * @param job the job
 * @param heads its heads, in the job's order
 * @param stock cutting plan and order
 * @param say figures in the job's units
 */
record RuleContext(Job job, List<HeadWork> heads, StockPlan stock, Figures say) {
  RuleContext(Job job, List<HeadWork> heads, StockPlan stock) {
    this(job, List.copyOf(heads), stock, Figures.of(job));
  }

  /** A threshold: the job's, or the rule's own. */
  Length length(String key, Length otherwise) {
    return job.limits().values().get(key) instanceof Length l ? l : otherwise;
  }

  /** The same with one default for inch jobs and a round one for metric jobs. */
  Length length(String key, double inches, double mm) {
    return length(key, inUnits(inches, mm));
  }

  /** A length for inch jobs, or its round counterpart for metric ones. */
  Length inUnits(double inches, double mm) {
    return metric() ? Length.mm(mm) : Length.inches(inches);
  }

  /** A threshold: the job's, or the rule's own. */
  double number(String key, double otherwise) {
    Object v = job.limits().values().get(key);
    return v instanceof Double d ? d : v instanceof Integer i ? i : otherwise;
  }

  /** A threshold: the job's, or the rule's own. */
  Angle angle(String key, Angle otherwise) {
    return job.limits().values().get(key) instanceof Angle a ? a : otherwise;
  }

  boolean metric() {
    return job.units() == Units.MILLIMETRE;
  }

  /** The clear width that the head was set out on. */
  Length span(HeadWork head) {
    return head.layout().halfWidth().times(2);
  }
}
