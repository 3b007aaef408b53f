package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.PlacedStone;
import headcourse.layout.yard.FromStock.Taken;
import headcourse.layout.yard.YardPieces.Lying;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Which piece each stone that is there was cut from: the one that the job says, else the one it was
 * planned for, if that is long enough, else the shortest that is.
 */
final class FittedPieces {
  private final Job job;
  private final YardPieces yard;
  private final PilePlan plan;
  private final List<Taken> of = new ArrayList<>();
  private final Set<String> used;

  /**
   * @param plan what was planned, or null
   * @param gone pieces that are not there any more
   */
  FittedPieces(Job job, PilePlan plan, Set<String> gone) {
    this.job = job;
    this.yard = new YardPieces(job);
    this.plan = plan;
    this.used = new LinkedHashSet<>(gone);
  }

  /** A stone that is there: which one, how long it is, and the piece that the job says. */
  private record There(Opening opening, String stone, boolean key, long extent, String said) {}

  /** The pieces of all stones that are there; none for those from elsewhere. */
  List<Taken> find(List<Site> sites) {
    List<There> all = new ArrayList<>();
    sites.forEach(s -> there(s, all));
    all.sort(Comparator.comparingLong(There::extent).reversed());
    all.stream()
        .filter(t -> !t.said().isEmpty() && !t.said().equals(Fitted.NO_PIECE))
        .forEach(t -> give(t, t.said()));
    all.removeIf(t -> !t.said().isEmpty());
    List<There> others = new ArrayList<>();
    for (There t : all) {
      List<Taken> planned = planned(t.stone());
      if (!planned.isEmpty() && holds(planned.get(0).piece(), t)) {
        give(t, planned.get(0).piece());
      } else if (!planned.isEmpty() || plan == null || !t.key()) {
        // A key for which the yard had no piece was cut from what was ordered.
        others.add(t);
      }
    }
    for (There t : others) {
      // Rather one that no other stone was planned for.
      yard.holding(t.opening(), t.key(), t.extent(), used).stream()
          .map(Lying::id)
          .min(Comparator.comparing(id -> plan != null && plan.takes(id)))
          .ifPresent(id -> give(t, id));
    }
    return List.copyOf(of);
  }

  private void there(Site site, List<There> all) {
    for (int s = 0; s < 2; s++) {
      for (int i = 1; i <= site.on(s).there(); i++) {
        all.add(there(site, site.mark(s, i), site.on(s).extent(i), site.on(s).asDrawn()));
      }
    }
    Fitted key = site.measured(site.keyMark()).orElse(null);
    if (key != null) {
      PlacedStone drawn = site.made().head().key(site.on(0).all());
      Length lean = drawn.top().minus(drawn.bottom());
      Length top = key.top() == null ? key.bottom().plus(lean) : key.top();
      boolean same = key.bottom().equals(drawn.bottom()) && top.equals(drawn.top());
      all.add(there(site, key.mark(), job.grid().ceil(key.bottom().max(top)), same));
    }
  }

  /** A stone that came out as planned is as long as it was planned to be. */
  private There there(Site site, String stone, long extent, boolean same) {
    long planned = planned(stone).stream().mapToLong(Taken::extent).findFirst().orElse(extent);
    String said = site.measured(stone).map(Fitted::piece).orElse("");
    boolean key = stone.equals(site.keyMark());
    return new There(site.opening(), stone, key, same ? planned : extent, said);
  }

  private List<Taken> planned(String stone) {
    return plan == null ? List.of() : plan.of(stone);
  }

  private void give(There t, String id) {
    used.add(id);
    of.add(new Taken(t.stone(), 1, id, t.extent()));
  }

  /** Whether a stone may have come from a piece; its ends need no more be clean. */
  private boolean holds(String id, There t) {
    return yard.but(used).stream()
        .anyMatch(p -> p.id().equals(id) && job.grid().floor(p.item().length()) >= t.extent());
  }
}
