package headcourse.stock;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.flat.FlatHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatTerms;
import headcourse.layout.flat.SideCase;
import headcourse.stock.PileReader.Lying;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Settles the keys of heads that are set from a pile, then their stones. A key whose width is left
 * open is as wide as one of the pieces; one whose width is given takes the shortest piece that
 * holds it, if any does.
 */
final class KeySearch {
  private static final int CHOICES = 60;

  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final PileReader yard;
  private KeyedPile best;
  private boolean proved = true;
  private int tried;
  private long steps;

  KeySearch(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.yard = new PileReader(job);
  }

  static boolean open(Opening o) {
    HeadSpec.Key key = o.head().key();
    return key != null && key.bottom() == null && key.top() == null;
  }

  /** The opening with a key as wide as a stone is meant to be, where its width is left open. */
  static Opening closed(Opening o, Job job) {
    return open(o) ? keyed(o, job.grid().snap(o.head().stones().target())) : o;
  }

  static Opening keyed(Opening o, Length width) {
    HeadSpec h = o.head();
    HeadSpec.Key k =
        new HeadSpec.Key(width, width, h.key().rise(), h.key().drop(), h.key().proud());
    return new Opening(
        o.path(),
        o.mark(),
        o.label(),
        o.count(),
        o.width(),
        o.height(),
        o.reveal(),
        o.wallLeft(),
        o.wallRight(),
        o.measured(),
        new HeadSpec(
            h.shape(),
            h.height(),
            k,
            h.stones(),
            h.bearing(),
            h.clear(),
            h.soffit(),
            h.seat(),
            h.params()));
  }

  /** The best choice without the pieces that are gone, or none. */
  Optional<KeyedPile> best(Set<String> gone) {
    keys(0, new ArrayList<>(), new ArrayList<>(), gone, 0);
    if (best == null) {
      return Optional.empty();
    }
    Pile.Answer a = best.answer();
    boolean sure = proved || a.cost().equals(a.bound());
    Pile.Answer told = new Pile.Answer(a.heads(), a.cost(), a.bound(), sure && a.proved(), steps);
    return Optional.of(new KeyedPile(best.sides(), told, best.taken()));
  }

  /** Whether all was looked at, so that no choice means that there is none. */
  boolean ruledOut() {
    return proved;
  }

  private void keys(
      int i, List<Opening> keyed, List<FromStock.Taken> taken, Set<String> gone, long sawn) {
    if (i == openings.size()) {
      stones(keyed, taken, gone, sawn);
      return;
    }
    Opening o = openings.get(i);
    if (o.head().key() == null) {
      keyed.add(o);
      keys(i + 1, keyed, taken, gone, sawn);
      keyed.remove(i);
      return;
    }
    List<Lying> fit = yard.pieces(gone).stream().filter(p -> yard.fits(p.item(), o, true)).toList();
    if (open(o)) {
      openKey(i, fit, keyed, taken, gone, sawn);
      return;
    }
    long width = job.grid().ceil(o.head().key().bottom().max(o.head().key().top()));
    List<Lying> wide =
        fit.stream()
            .filter(p -> p.usable() >= width)
            .sorted(Comparator.comparingLong(Lying::usable))
            .limit(o.count())
            .toList();
    // A key that the yard has not got is ordered, and is no matter of the pile.
    boolean here = wide.size() == o.count();
    with(i, o, here ? wide : List.of(), width, keyed, taken, gone, sawn);
  }

  private void openKey(
      int i,
      List<Lying> fit,
      List<Opening> keyed,
      List<FromStock.Taken> taken,
      Set<String> gone,
      long sawn) {
    Opening o = openings.get(i);
    long target = job.grid().nearest(o.head().stones().target());
    long min = job.grid().ceil(o.head().stones().min());
    // Both halves of a key are whole ticks.
    List<Long> widths =
        fit.stream()
            .map(p -> p.usable() / 2 * 2)
            .filter(w -> w >= min)
            .distinct()
            .sorted(
                Comparator.comparingLong((Long w) -> Math.abs(w - target)).thenComparing(w -> w))
            .toList();
    for (long w : widths) {
      if (done()) {
        return;
      }
      List<Lying> of =
          fit.stream()
              .filter(p -> p.usable() >= w)
              .sorted(Comparator.comparingLong(Lying::usable))
              .limit(o.count())
              .toList();
      if (of.size() == o.count()) {
        with(i, keyed(o, job.grid().ticks(w)), of, w, keyed, taken, gone, sawn);
      }
    }
  }

  private boolean done() {
    if (best != null
        && best.answer().cost().equals(best.answer().bound())
        && best.answer().cost().sawn() == 0
        && best.answer().cost().imbalance() == 0) {
      return true;
    }
    if (tried >= CHOICES || steps > job.steps()) {
      proved = false;
      return true;
    }
    return false;
  }

  private void with(
      int i,
      Opening o,
      List<Lying> pieces,
      long width,
      List<Opening> keyed,
      List<FromStock.Taken> taken,
      Set<String> gone,
      long sawn) {
    Set<String> less = new LinkedHashSet<>(gone);
    long more = sawn;
    int before = taken.size();
    for (int c = 0; c < pieces.size(); c++) {
      less.add(pieces.get(c).id());
      taken.add(new FromStock.Taken(o.mark() + "-K", c + 1, pieces.get(c).id(), width));
      more += pieces.get(c).usable() - width;
    }
    keyed.add(o);
    keys(i + 1, keyed, taken, less, more);
    keyed.remove(i);
    taken.subList(before, taken.size()).clear();
  }

  private void stones(
      List<Opening> keyed, List<FromStock.Taken> keys, Set<String> gone, long sawn) {
    tried++;
    List<KeyedPile.Sides> sides = new ArrayList<>();
    List<Pile.Head> heads = new ArrayList<>();
    for (Opening o : keyed) {
      FlatReading reading = read.apply(o);
      if (reading.head() == null) {
        return;
      }
      FlatHead head = reading.head();
      FlatTerms terms = head.terms();
      List<SideCase> left = head.cases(terms.left(), Double.NaN);
      List<SideCase> right = head.cases(terms.right(), Double.NaN);
      if (left.size() != 1 || right.size() != 1) {
        return;
      }
      if (left.get(0).ends().isEmpty() || right.get(0).ends().isEmpty()) {
        return;
      }
      FlatSide l = side(head, left.get(0));
      FlatSide r = side(head, right.get(0));
      sides.add(new KeyedPile.Sides(head, l, r));
      Integer each = terms.stones().eachSide();
      heads.add(
          new Pile.Head(
              o.count(),
              terms.stones().mirror(),
              each == null ? 0 : each,
              terms.min(),
              terms.max(),
              terms.jump(),
              l,
              r));
    }
    List<Lying> lying = yard.pieces(gone);
    List<Pile.Piece> pieces = new ArrayList<>();
    for (Lying p : lying) {
      pieces.add(
          new Pile.Piece(
              p.id(), p.usable(), keyed.stream().map(o -> yard.fits(p.item(), o, false)).toList()));
    }
    Pile pile = new Pile(pieces, heads);
    Pile.Answer a = PileSolver.solve(pile, Math.max(1, job.steps() - steps));
    steps += a.steps();
    proved &= a.proved();
    if (a.heads().isEmpty()) {
      return;
    }
    Pile.Cost cost = a.cost().plus(sawn, 0, 0);
    if (best == null || cost.compareTo(best.answer().cost()) < 0) {
      List<FromStock.Taken> taken = new ArrayList<>(keys);
      taken.addAll(taken(keyed, pile, a));
      best =
          new KeyedPile(
              sides,
              new Pile.Answer(a.heads(), cost, a.bound().plus(sawn, 0, 0), a.proved(), a.steps()),
              taken);
    }
  }

  private FlatSide side(FlatHead head, SideCase one) {
    FlatTerms terms = head.terms();
    return new FlatSide(one, head.check(one.lines()), terms.joint(), terms.bearing().target());
  }

  private static List<FromStock.Taken> taken(List<Opening> keyed, Pile pile, Pile.Answer a) {
    List<FromStock.Taken> out = new ArrayList<>();
    for (int k = 0; k < keyed.size(); k++) {
      Pile.Chosen c = a.heads().get(k);
      for (int s = 0; s < 2; s++) {
        List<Pile.Picked> row = s == 0 ? c.left() : c.right();
        for (int i = 0; i < row.size(); i++) {
          String mark = keyed.get(k).mark() + (s == 0 ? "-L" : "-R") + (i + 1);
          long extent = row.get(i).width() + pile.heads().get(k).side(s).extra(i + 1);
          for (int n = 0; n < row.get(i).pieces().size(); n++) {
            String id = pile.pieces().get(row.get(i).pieces().get(n)).id();
            out.add(new FromStock.Taken(mark, n + 1, id, extent));
          }
        }
      }
    }
    return out;
  }
}
