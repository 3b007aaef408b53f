package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.flat.FlatReading;
import headcourse.stock.PileReader.Lying;
import headcourse.stock.StockPlan.Moved;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The choice from the pile as it was ticketed, and then without each spoiled piece: its stone is
 * cut to the same size from the shortest other piece that holds it; only where there is none is all
 * chosen anew.
 */
final class PileReplacement {
  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final PileReader yard;

  PileReplacement(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.yard = new PileReader(job);
  }

  /**
   * What it came to.
   *
   * @param best the choice, if one was found
   * @param ruledOut where none was, whether there is none
   * @param changes what moved
   */
  record Outcome(Optional<KeyedPile> best, boolean ruledOut, List<Moved> changes) {}

  Outcome run() {
    Set<String> gone = new LinkedHashSet<>();
    KeySearch search = new KeySearch(job, openings, read);
    Optional<KeyedPile> best = search.best(gone);
    List<Moved> changes = new ArrayList<>();
    for (String id : job.spoiled()) {
      gone.add(id);
      if (best.isPresent() && best.get().taken().stream().anyMatch(t -> t.piece().equals(id))) {
        KeyedPile before = best.get();
        best = replaced(before, id, gone);
        if (best.isEmpty()) {
          search = new KeySearch(job, openings, read);
          best = search.best(gone);
        }
        best.ifPresent(b -> changes.addAll(changes(before.taken(), b.taken())));
      }
    }
    return new Outcome(best, search.ruledOut(), changes);
  }

  private Optional<KeyedPile> replaced(KeyedPile before, String id, Set<String> gone) {
    Set<String> busy = new TreeSet<>(gone);
    before.taken().forEach(t -> busy.add(t.piece()));
    List<FromStock.Taken> taken = new ArrayList<>(before.taken());
    for (int i = 0; i < taken.size(); i++) {
      FromStock.Taken t = taken.get(i);
      if (!t.piece().equals(id)) {
        continue;
      }
      Opening opening =
          openings.stream()
              .filter(o -> t.stone().startsWith(o.mark() + "-"))
              .findFirst()
              .orElseThrow();
      boolean key = t.stone().equals(opening.mark() + "-K");
      Optional<Lying> other =
          yard.pieces(busy).stream()
              .filter(p -> p.usable() >= t.extent() && yard.fits(p.item(), opening, key))
              .min(Comparator.comparingLong(Lying::usable));
      if (other.isEmpty()) {
        return Optional.empty();
      }
      taken.set(i, t.from(other.get().id()));
    }
    Pile.Answer a = before.answer();
    long more = sawn(taken) - sawn(before.taken());
    Pile.Answer now =
        new Pile.Answer(a.heads(), a.cost().plus(more, 0, 0), a.bound(), false, a.steps());
    return Optional.of(new KeyedPile(before.sides(), now, taken));
  }

  private long sawn(List<FromStock.Taken> taken) {
    TreeMap<String, Long> usable = new TreeMap<>();
    yard.pieces(Set.of()).forEach(p -> usable.put(p.id(), p.usable()));
    return taken.stream().mapToLong(t -> usable.get(t.piece()) - t.extent()).sum();
  }

  private static List<Moved> changes(List<FromStock.Taken> before, List<FromStock.Taken> after) {
    TreeMap<String, FromStock.Taken> now = new TreeMap<>();
    after.forEach(t -> now.put(t.stone() + " " + t.copy(), t));
    List<Moved> out = new ArrayList<>();
    for (FromStock.Taken t : before) {
      FromStock.Taken n = now.get(t.stone() + " " + t.copy());
      String to = n == null ? "" : n.piece();
      if (!to.equals(t.piece()) || n.extent() != t.extent()) {
        out.add(new Moved(t.stone(), StockPlan.Part.WHOLE, t.piece(), to));
      }
    }
    return out;
  }
}
