package headcourse.stock;

import headcourse.job.Job;
import headcourse.stock.StockPlan.Moved;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Takes what broke out of the plan, one after another, each time with as few stones moved to other
 * blanks as can be without ordering more than must be.
 *
 * <p>The stones that are lost must move. First they go where there is room, on off-cuts, on blanks
 * not used yet and on what is left over of the others; only where that leaves one out that a plan
 * from scratch would place are other blanks opened again: one, then two, then all.
 */
final class Spoilage {
  private static final int PAIRS = 200;

  private final Job job;
  private final Yard yard;
  private final List<Crosscut> crosscuts;
  private final Set<String> gone;
  private final List<Moved> changes = new ArrayList<>();
  private Assignment plan;

  /**
   * @param plan the plan before
   * @param before pieces that were spoiled as stones chosen from the yard's pieces, and replaced
   */
  Spoilage(Job job, Yard yard, Assignment plan, List<String> before) {
    this.job = job;
    this.yard = yard;
    this.plan = plan;
    this.crosscuts = yard.crosscuts();
    this.gone = new LinkedHashSet<>(before);
  }

  Tickets.Carried carried() {
    return new Tickets.Carried(yard, plan, List.copyOf(changes), gone);
  }

  /** The plan as it is by now. */
  Assignment plan() {
    return plan;
  }

  /** Goes on with a plan in which something else happened. */
  void follow(Assignment other) {
    plan = other;
  }

  /** Loses a blank with its number, an off-cut with its own, or a stone. */
  void lose(String name) {
    if (name.contains("/")) {
      loseOffCut(name);
    } else if (name.contains("#")) {
      loseBlank(name);
    } else {
      Cuts cuts = new Cuts(yard, plan);
      List<Integer> lost = cuts.stone(name);
      lost.forEach(cuts::broke);
      replace(cuts.on(plan), lost);
    }
  }

  private void loseBlank(String id) {
    gone.add(id);
    if (plan.home().contains(id)) {
      List<String> home = plan.home().stream().map(h -> h.equals(id) ? "" : h).toList();
      replace(
          plan.with(
              plan.blanks().stream().filter(b -> !b.id().equals(id)).toList(), home, plan.used()),
          List.of());
    }
  }

  private void loseOffCut(String id) {
    for (OffCuts.Left left : new OffCuts(job, yard).of(plan, gone)) {
      if (left.id().equals(id)) {
        Cuts cuts = new Cuts(yard, plan);
        cuts.lost(left);
        replace(cuts.on(plan), List.of());
        return;
      }
    }
  }

  /** Finds other places for what has none, and notes what moved; stones cut again always do. */
  private void replace(Assignment loose, List<Integer> again) {
    Assignment next = replaced(loose);
    changes.addAll(Assignment.changes(crosscuts, plan, next, again));
    plan = next;
  }

  private Assignment replaced(Assignment loose) {
    Assignment fresh = yard.fresh(loose, gone);
    long must = fresh.cost().missing();
    Assignment best = yard.filled(loose, gone);
    if (best.cost().missing() <= must) {
      return best;
    }
    List<String> others = loose.blanks().stream().map(StockPlan.CutBlank::id).toList();
    best = fresh;
    for (String other : others) {
      best = better(best, yard.repaired(loose, gone, Set.of(other)), must);
    }
    if (best != fresh) {
      return best;
    }
    int tried = 0;
    for (int i = 0; i < others.size(); i++) {
      for (int j = i + 1; j < others.size() && tried < PAIRS; j++, tried++) {
        Set<String> open = new TreeSet<>(Set.of(others.get(i), others.get(j)));
        best = better(best, yard.repaired(loose, gone, open), must);
      }
    }
    return best;
  }

  private Assignment better(Assignment best, Assignment next, long must) {
    boolean fewer = changed(next) < changed(best);
    return next.cost().missing() <= must && fewer ? next : best;
  }

  private int changed(Assignment next) {
    return Assignment.changes(crosscuts, plan, next, List.of()).size();
  }
}
