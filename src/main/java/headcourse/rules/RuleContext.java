package headcourse.rules;

import headcourse.bench.EdgeName;
import headcourse.bench.HeadWork;
import headcourse.job.Job;
import headcourse.stock.StockPlan;
import headcourse.text.Words;
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
 * @param words those of the language that is spoken
 * @param say figures in the job's units and that language
 */
record RuleContext(Job job, List<HeadWork> heads, StockPlan stock, Words words, Figures say) {
  RuleContext(Job job, List<HeadWork> heads, StockPlan stock, Words words) {
    this(job, List.copyOf(heads), stock, words, Figures.of(job, words));
  }

  /** One context for each language of the job. */
  static List<RuleContext> all(Job job, List<HeadWork> heads, StockPlan stock) {
    return Words.of(job.language().word()).singly().stream()
        .map(words -> new RuleContext(job, heads, stock, words))
        .toList();
  }

  /** The same for what is said of one head: an arch has words of its own. */
  RuleContext of(HeadWork head) {
    Words its = words.ofArch(head.layout().curved());
    return its == words ? this : new RuleContext(job, heads, stock, its);
  }

  /** What to say for a key. */
  String text(String key, Object... values) {
    return words.say(key, values);
  }

  /** So many of something, from a key's beginning that {@code one} and {@code many} complete. */
  String count(String key, int n) {
    return words.say(key + (n == 1 ? "one" : "many"), n);
  }

  /** The name of an edge. */
  String edge(EdgeName edge) {
    return words.say("rule.edge-" + edge.word());
  }

  /** A threshold: the job's, or the rule's own. */
  Length length(String key, Length otherwise) {
    return job.checks().limits().values().get(key) instanceof Length l ? l : otherwise;
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
    Object v = job.checks().limits().values().get(key);
    return v instanceof Double d ? d : v instanceof Integer i ? i : otherwise;
  }

  /** A threshold: the job's, or the rule's own. */
  Angle angle(String key, Angle otherwise) {
    return job.checks().limits().values().get(key) instanceof Angle a ? a : otherwise;
  }

  boolean metric() {
    return job.units() == Units.MILLIMETRE;
  }

  /** The clear width that the head was set out on. */
  Length span(HeadWork head) {
    return head.layout().halfWidth().times(2);
  }
}
