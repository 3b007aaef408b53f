package headcourse.stock;

import headcourse.job.Job;
import headcourse.stock.StockPlan.Moved;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Takes spoiled pieces out of the plan one after another, each time with as few stones moved to
 * other blanks as can be without ordering more than must be.
 *
 * <p>The stones of the spoiled blank must move. First they go where there is room, on blanks not
 * used yet and on what is left over of the others; only where that leaves one out that a plan from
 * scratch would place are other blanks opened again: one, then two, then all.
 */
final class Spoilage {
  private static final int PAIRS = 200;

  private final Job job;
  private final Yard yard;
  private final List<Lot> lots;
  private final List<String> before;

  /**
   * @param before pieces that were spoiled as stones chosen from the yard's pieces, and replaced
   */
  Spoilage(Job job, Yard yard, List<String> before) {
    this.before = List.copyOf(before);
    this.job = job;
    this.yard = yard;
    this.lots = yard.lots();
  }

  /** The plan that is left, and what moved on the way. */
  record Outcome(Assignment plan, List<Moved> changes) {}

  Outcome run() {
    Set<String> gone = new LinkedHashSet<>(before);
    Assignment plan = yard.solve(gone);
    List<Moved> changes = new ArrayList<>();
    for (String id : job.spoiled()) {
      gone.add(id);
      if (plan.home().contains(id)) {
        Assignment next = without(plan, id, gone);
        changes.addAll(Assignment.changes(lots, plan, next));
        plan = next;
      }
    }
    return new Outcome(plan, changes);
  }

  private Assignment without(Assignment plan, String id, Set<String> gone) {
    Assignment fresh = yard.solve(gone);
    long must = fresh.cost().missing();
    Assignment best = yard.repaired(plan, gone, Set.of(id));
    if (best.cost().missing() <= must) {
      return best;
    }
    List<String> others =
        plan.blanks().stream().map(StockPlan.CutBlank::id).filter(b -> !b.equals(id)).toList();
    best = fresh;
    for (int i = 0; i < others.size(); i++) {
      best = better(plan, best, yard.repaired(plan, gone, Set.of(id, others.get(i))), must);
    }
    if (best != fresh) {
      return best;
    }
    int tried = 0;
    for (int i = 0; i < others.size(); i++) {
      for (int j = i + 1; j < others.size() && tried < PAIRS; j++, tried++) {
        Set<String> open = new TreeSet<>(Set.of(id, others.get(i), others.get(j)));
        best = better(plan, best, yard.repaired(plan, gone, open), must);
      }
    }
    return best;
  }

  private Assignment better(Assignment plan, Assignment best, Assignment next, long must) {
    boolean fewer =
        Assignment.changes(lots, plan, next).size() < Assignment.changes(lots, plan, best).size();
    return next.cost().missing() <= must && fewer ? next : best;
  }
}
