package headcourse.stock;

import headcourse.job.Job;
import headcourse.layout.yard.FromStock.Taken;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds places for parts that are not as they were ticketed; those that are keep theirs. */
final class Anew {
  private final Job job;
  private final List<Taken> taken;

  Anew(Job job, List<Taken> taken) {
    this.job = job;
    this.taken = taken;
  }

  /**
   * The plan of what is wanted.
   *
   * @param was the plan of the parts as they were ticketed, each a crosscut by itself
   * @param wanted parts that are still to be cut
   */
  Tickets.Carried planned(Tickets.Carried was, List<Part> wanted) {
    Yard yard = was.yard();
    Assignment plan = was.plan();
    List<Integer> as = new ArrayList<>();
    List<Part> other = new ArrayList<>();
    for (Part p : wanted) {
      int crosscut = same(yard, plan, p, as);
      if (crosscut < 0) {
        other.add(p);
      } else {
        as.add(crosscut);
      }
    }
    Cuts cuts = new Cuts(yard, plan);
    Set<String> touched = new LinkedHashSet<>();
    for (int i = 0; i < plan.home().size(); i++) {
      String home = plan.home().get(i);
      if (!as.contains(i) && !home.isEmpty() && !home.equals(Assignment.DONE)) {
        touched.add(home);
        cuts.open(i);
      }
    }
    List<Crosscut> crosscuts = new ArrayList<>(as.stream().map(yard.crosscuts()::get).toList());
    Strips strips = new Strips(job, other);
    crosscuts.addAll(strips.crosscuts(strips.most()));
    List<String> home = new ArrayList<>(Collections.nCopies(crosscuts.size(), ""));
    for (int i = 0; i < as.size(); i++) {
      home.set(i, plan.home().get(as.get(i)));
    }
    Assignment kept = cuts.on(plan);
    kept = kept.with(kept.blanks(), home, kept.used());
    Yard now = new Yard(job, crosscuts, taken);
    Assignment best = best(now, kept, was.gone(), touched);
    return new Tickets.Carried(now, best, was.changes(), was.gone());
  }

  private Assignment best(Yard yard, Assignment kept, Set<String> gone, Set<String> touched) {
    Assignment fresh = yard.fresh(kept, gone);
    List<Assignment> plans = new ArrayList<>(List.of(yard.filled(kept, gone)));
    taken.forEach(t -> touched.remove(t.piece()));
    if (!touched.isEmpty()) {
      plans.add(yard.repaired(kept, gone, touched));
    }
    Comparator<Assignment> least = Comparator.comparingLong(a -> a.cost().missing());
    Assignment best = Collections.min(plans, least.thenComparingLong(a -> a.cost().lead()));
    return Collections.min(List.of(best, fresh), least).boundBy(fresh);
  }

  /** The crosscut that is the same part with a place, and not taken yet; −1 where there is none. */
  private static int same(Yard yard, Assignment plan, Part part, List<Integer> taken) {
    List<Object> key = Yard.sameness(Crosscut.of(part));
    for (int i = 0; i < plan.home().size(); i++) {
      Part p = yard.crosscuts().get(i).first();
      boolean open = !plan.home().get(i).isEmpty() && !plan.home().get(i).equals(Assignment.DONE);
      boolean alike = p.stone().equals(part.stone()) && p.of() == part.of();
      if (open && alike && !taken.contains(i) && Yard.sameness(Crosscut.of(p)).equals(key)) {
        return i;
      }
    }
    return -1;
  }
}
