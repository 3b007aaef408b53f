package headcourse.stock;

import headcourse.job.Opening;
import headcourse.job.Params;
import headcourse.stock.PileReader.Lying;
import headcourse.stock.pile.Pile;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Stones whose pieces are gone, each cut to the same size from the shortest other piece that holds
 * it: what is tried first where a stone's length depends on its place, since no other width leaves
 * the rest of its side as it was.
 */
final class SameSize {
  private final List<Opening> openings;
  private final PileReader yard;

  SameSize(List<Opening> openings, PileReader yard) {
    this.openings = openings;
    this.yard = yard;
  }

  /** The plan with other pieces for these stones, or null where there are none. */
  PilePlan of(PilePlan plan, Set<String> gone) {
    Set<String> busy = new TreeSet<>(gone);
    plan.taken().forEach(t -> busy.add(t.piece()));
    List<FromStock.Taken> taken = new ArrayList<>(plan.taken());
    long more = 0;
    for (int i = 0; i < taken.size(); i++) {
      FromStock.Taken t = taken.get(i);
      if (!gone.contains(t.piece())) {
        continue;
      }
      Opening o =
          openings.stream()
              .filter(x -> t.stone().startsWith(x.mark() + "-"))
              .findFirst()
              .orElseThrow();
      boolean key = t.stone().equals(o.mark() + "-K");
      // Under a cambered soffit a stone lies aslant on its blank, so the head's height won't do.
      Params params = o.head().params();
      boolean cambered = params.length("camber").isPresent() || params.angle("camber").isPresent();
      Optional<Lying> other =
          yard.pieces(busy).stream()
              .filter(p -> p.usable() >= t.extent() && yard.fits(p.item(), o, key))
              .filter(p -> !cambered || p.item().face().compareTo(face(t.piece())) >= 0)
              .min(Comparator.comparingLong(Lying::usable));
      if (other.isEmpty()) {
        return null;
      }
      more += other.get().usable() - usable(t.piece());
      busy.add(other.get().id());
      taken.set(i, t.from(other.get().id()));
    }
    Pile.Cost cost = plan.cost().plus(more, 0, 0);
    return new PilePlan(plan.heads(), taken, cost, plan.bound(), false, plan.steps());
  }

  private Length face(String id) {
    return lying(id).item().face();
  }

  private long usable(String id) {
    return lying(id).usable();
  }

  private Lying lying(String id) {
    return yard.pieces(Set.of()).stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }
}
