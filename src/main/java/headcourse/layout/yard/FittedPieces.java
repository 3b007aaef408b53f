package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.PlacedStone;
import headcourse.layout.yard.YardPieces.Lying;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which piece each stone that is there was cut from: the one that the job says, else the one it was
 * planned for, if that is long enough, else the shortest that is.
 */
final class FittedPieces {
  private final Job job;
  private final YardPieces yard;
  private final PilePlan plan;
  private final List<Fitted> fitted;
  private final Map<String, FromStock.Taken> of = new LinkedHashMap<>();
  private final Set<String> used;

  /**
   * @param plan what was planned, or null
   * @param fitted the stones that are cut
   * @param gone pieces that are not there any more
   */
  FittedPieces(Job job, PilePlan plan, List<Fitted> fitted, Set<String> gone) {
    this.job = job;
    this.yard = new YardPieces(job);
    this.plan = plan;
    this.fitted = fitted;
    this.used = new LinkedHashSet<>(gone);
  }

  /** A stone that is there. */
  private record There(String stone, Opening opening, boolean key, long extent, Fitted measured) {}

  /** The pieces of all stones that are there; none for those from elsewhere. */
  List<FromStock.Taken> find(List<Site> sites) {
    List<There> all = new ArrayList<>();
    for (Site site : sites) {
      there(site, all);
    }
    all.sort(Comparator.comparingLong(There::extent).reversed());
    List<There> open = new ArrayList<>();
    for (There t : all) {
      String said = t.measured() == null ? "" : t.measured().piece();
      if (said.isEmpty()) {
        open.add(t);
      } else if (!said.equals(Fitted.NO_PIECE)) {
        give(t, said);
      }
    }
    List<There> others = new ArrayList<>();
    for (There t : open) {
      Optional<String> planned =
          plan == null
              ? Optional.empty()
              : plan.of(t.stone()).stream().map(FromStock.Taken::piece).findFirst();
      if (planned.isPresent() && holds(planned.get(), t)) {
        give(t, planned.get());
      } else if (planned.isPresent() || plan == null || !t.key()) {
        // A key for which the yard had no piece was cut from what was ordered.
        others.add(t);
      }
    }
    for (There t : others) {
      shortest(t, true).or(() -> shortest(t, false)).ifPresent(id -> give(t, id));
    }
    return List.copyOf(of.values());
  }

  private void there(Site site, List<There> all) {
    Opening o = site.made().head().terms().opening();
    for (int s = 0; s < 2; s++) {
      for (int i = 1; i <= site.on(s).there(); i++) {
        String mark = (s == 0 ? "L" : "R") + i;
        String stone = o.mark() + "-" + mark;
        long extent = site.on(s).extent(i);
        extent = site.on(s).asDrawn() ? planned(stone, extent) : extent;
        all.add(new There(stone, o, false, extent, measured(o, mark)));
      }
    }
    Fitted key = measured(o, "K");
    if (key != null) {
      PlacedStone drawn = site.made().head().key(site.on(0).all());
      Length lean = drawn.top().minus(drawn.bottom());
      Length top = key.top() == null ? key.bottom().plus(lean) : key.top();
      boolean same = key.bottom().equals(drawn.bottom()) && top.equals(drawn.top());
      long extent = job.grid().ceil(key.bottom().max(top));
      extent = same ? planned(o.mark() + "-K", extent) : extent;
      all.add(new There(o.mark() + "-K", o, true, extent, key));
    }
  }

  /** How long a stone that came out as planned was planned to be, else what it measures. */
  private long planned(String stone, long measured) {
    return plan == null
        ? measured
        : plan.of(stone).stream().mapToLong(FromStock.Taken::extent).findFirst().orElse(measured);
  }

  private Fitted measured(Opening o, String mark) {
    return fitted.stream()
        .filter(f -> f.opening().equals(o.mark()) && f.stone().equals(mark))
        .findFirst()
        .orElse(null);
  }

  private void give(There t, String id) {
    used.add(id);
    of.put(t.stone(), new FromStock.Taken(t.stone(), 1, id, t.extent()));
  }

  /** Whether a stone may have come from a piece; its ends need no more be clean. */
  private boolean holds(String id, There t) {
    return yard.but(used).stream()
        .anyMatch(p -> p.id().equals(id) && job.grid().floor(p.item().length()) >= t.extent());
  }

  private Optional<String> shortest(There t, boolean spare) {
    return yard.but(used).stream()
        .filter(p -> yard.fits(p.item(), t.opening(), t.key()) && p.usable() >= t.extent())
        .filter(p -> !spare || plan == null || !plan.takes(p.id()))
        .min(Comparator.comparingLong(Lying::usable))
        .map(Lying::id);
  }
}
