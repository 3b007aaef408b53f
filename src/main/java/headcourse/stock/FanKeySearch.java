package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatTerms;
import headcourse.stock.FanKeys.Keyed;
import headcourse.stock.FanKeys.Stand;
import headcourse.stock.PileReader.Lying;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Settles keys, striking points and stones of heads of which some are fans, from one pile. */
final class FanKeySearch {
  private static final int CHOICES = 60;
  private static final long QUICK = 20_000;

  /** How many keys are looked at again, and with how many striking points. */
  private static final int AGAIN = 5;

  private static final int MORE = 16;
  private static final int FEW = 4;
  private static final Comparator<Stand> INMOST =
      Comparator.comparingLong((Stand s) -> s.left().firstEnd())
          .thenComparingLong(s -> s.left().lastEnd())
          .thenComparingLong(s -> s.right().firstEnd())
          .thenComparingLong(s -> s.right().lastEnd());

  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final PileReader yard;
  private final List<Keyed> keyed = new ArrayList<>();
  private final List<Keys> tried = new ArrayList<>();
  private KeyedPile best;
  private Pile.Cost bound;
  private boolean ruledOut = true;
  private long steps;

  FanKeySearch(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.yard = new PileReader(job);
  }

  /** Keys settled for all heads, with what their stones cost as soon found, or null. */
  private record Keys(List<Keyed> keyed, Set<String> gone, Pile.Cost floor, Pile.Cost soon) {
    boolean anyBelow(Pile.Cost cost) {
      return floor.compareTo(cost) < 0;
    }
  }

  private static final Comparator<Keys> SOONEST =
      Comparator.comparing(Keys::soon, Comparator.nullsLast(Comparator.naturalOrder()));

  /** The best choice without the pieces that are gone, or none. */
  Optional<KeyedPile> best(Set<String> gone) {
    keys(0, gone, 0);
    tried.sort(SOONEST);
    for (int i = 0; i < Math.min(AGAIN, tried.size()) && again(); i++) {
      tried.set(i, soon(tried.get(i), job.steps() / 25, MORE));
    }
    tried.sort(SOONEST);
    for (int i = 0; i < tried.size(); i++) {
      Keys k = tried.get(i);
      if (best != null && !k.anyBelow(best.answer().cost())) {
        bound(k.floor());
      } else if (i > 0 && steps >= job.steps()) {
        bound(k.floor());
        ruledOut = false;
      } else {
        long rest = Math.max(1, job.steps() - steps);
        stones(k, tried.size() > 1 ? Math.max(1, rest / 2) : rest);
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    Pile.Answer a = best.answer();
    Pile.Cost least = bound.compareTo(a.cost()) < 0 ? bound : a.cost();
    boolean proved = least.compareTo(a.cost()) >= 0;
    return Optional.of(
        new KeyedPile(
            best.sides(),
            new Pile.Answer(a.heads(), a.cost(), least, proved, steps),
            best.taken()));
  }

  /** With one key there is no choice, and with few steps no time. */
  private boolean again() {
    return tried.size() > 1 && steps < job.steps() / 2;
  }

  /** Whether all was looked at, so that no choice means that there is none. */
  boolean ruledOut() {
    return ruledOut;
  }

  private void bound(Pile.Cost one) {
    bound = bound == null || one.compareTo(bound) < 0 ? one : bound;
  }

  /** What stones for these keys cost, as soon found. */
  private Keys soon(Keys k, long limit, int fans) {
    FanPile pile = pile(k);
    FanPile.Answer found = FanSolver.quick(pile, limit, fans);
    steps += found.stones().steps();
    keep(k, pile, found);
    Pile.Cost cost = found.stones().cost();
    boolean better = k.soon() == null || cost != null && cost.compareTo(k.soon()) < 0;
    return new Keys(k.keyed(), k.gone(), k.floor(), better ? cost : k.soon());
  }

  private void keep(Keys k, FanPile pile, FanPile.Answer found) {
    Pile.Cost cost = found.stones().cost();
    if (cost != null && (best == null || cost.compareTo(best.answer().cost()) < 0)) {
      best = keyedPile(k, pile, found);
    }
  }

  private void keys(int i, Set<String> gone, long sawn) {
    if (i == openings.size()) {
      Keys k = new Keys(List.copyOf(keyed), gone, new Pile.Cost(sawn, 0, 0), null);
      tried.add(soon(k, Math.min(QUICK, job.steps() / 50), FEW));
      return;
    }
    Iterator<Keyed> of = new FanKeys(job, openings.get(i), read).of(yard.pieces(gone));
    while (of.hasNext()) {
      Keyed k = of.next();
      if (tried.size() == CHOICES || !tried.isEmpty() && steps > job.steps() / 2) {
        bound(Pile.Cost.NONE);
        ruledOut = false;
        return;
      }
      Set<String> less = new LinkedHashSet<>(gone);
      k.pieces().forEach(p -> less.add(p.id()));
      keyed.add(k);
      keys(i + 1, less, sawn + k.leastSawn());
      keyed.remove(i);
    }
  }

  /**
   * Sides change places where the wall or the jamb on the right is the nearer, so that a mirrored
   * job is set out mirrored.
   */
  private static boolean swapped(Keyed k) {
    FlatTerms terms = k.stands().get(0).head().terms();
    int wall = Long.compare(terms.right().wall(), terms.left().wall());
    return wall < 0 || wall == 0 && terms.right().jamb() < terms.left().jamb();
  }

  private static List<Stand> stands(Keyed k) {
    boolean swap = swapped(k);
    return k.stands().stream().map(s -> swap ? s.mirrored() : s).sorted(INMOST).toList();
  }

  private FanPile pile(Keys keys) {
    List<FanPile.Head> heads = new ArrayList<>();
    for (int h = 0; h < openings.size(); h++) {
      Keyed k = keys.keyed().get(h);
      List<Stand> mine = stands(k);
      FlatTerms terms = mine.get(0).head().terms();
      Integer each = terms.stones().eachSide();
      heads.add(
          new FanPile.Head(
              openings.get(h).count(),
              terms.stones().mirror(),
              each == null ? 0 : each,
              terms.min(),
              terms.max(),
              terms.jump(),
              mine.stream().map(s -> new FanPile.Fan(s.left(), s.right(), k.sawn(s))).toList()));
    }
    List<Pile.Piece> pieces = new ArrayList<>();
    for (Lying p : yard.pieces(keys.gone())) {
      List<Boolean> fits = new ArrayList<>();
      for (int h = 0; h < openings.size(); h++) {
        fits.add(fits(p, openings.get(h), keys.keyed().get(h).stands()));
      }
      pieces.add(new Pile.Piece(p.id(), p.usable(), fits));
    }
    return new FanPile(pieces, heads);
  }

  /** Looks for better stones with these keys than the best so far, and notes the bound. */
  private void stones(Keys keys, long limit) {
    FanPile pile = pile(keys);
    Pile.Cost beat = best == null ? null : best.answer().cost();
    FanPile.Answer found = FanSolver.solve(pile, beat, limit);
    Pile.Answer a = found.stones();
    steps += a.steps();
    if (!a.proved() || !a.heads().isEmpty() || beat != null) {
      bound(a.bound());
    }
    ruledOut &= a.proved();
    keep(keys, pile, found);
  }

  private boolean fits(Lying p, Opening o, List<Stand> stands) {
    Length more = Length.ZERO;
    for (Stand s : stands) {
      more = more.max(s.head().moreHeight(s.left().outmost()));
      more = more.max(s.head().moreHeight(s.right().outmost()));
    }
    Length height = o.head().height().plus(more);
    return yard.fits(p.item(), o, false) && p.item().face().compareTo(height) >= 0;
  }

  private KeyedPile keyedPile(Keys settled, FanPile pile, FanPile.Answer found) {
    List<KeyedPile.Sides> sides = new ArrayList<>();
    List<Pile.Chosen> chosen = new ArrayList<>();
    List<FromStock.Taken> keys = new ArrayList<>();
    List<FromStock.Taken> taken = new ArrayList<>();
    for (int h = 0; h < openings.size(); h++) {
      Keyed k = settled.keyed().get(h);
      Pile.Chosen c = found.stones().heads().get(h);
      Stand s = stands(k).get(found.fans().get(h));
      if (swapped(k)) {
        c = new Pile.Chosen(c.right(), c.left());
        s = s.mirrored();
      }
      String mark = openings.get(h).mark();
      List<Lying> key = k.pieces();
      for (int n = 0; n < key.size(); n++) {
        keys.add(new FromStock.Taken(mark + "-K", n + 1, key.get(n).id(), s.key()));
      }
      taken.addAll(taken(pile, mark + "-L", s.left(), c.left()));
      taken.addAll(taken(pile, mark + "-R", s.right(), c.right()));
      sides.add(new KeyedPile.Sides(s.head(), s.left(), s.right()));
      chosen.add(c);
    }
    keys.addAll(taken);
    Pile.Answer a = found.stones();
    return new KeyedPile(
        sides, new Pile.Answer(chosen, a.cost(), a.bound(), a.proved(), a.steps()), keys);
  }

  private static List<FromStock.Taken> taken(
      FanPile pile, String mark, FlatSide side, List<Pile.Picked> row) {
    List<FromStock.Taken> out = new ArrayList<>();
    long foot = side.start();
    for (int i = 1; i <= row.size(); i++) {
      Pile.Picked p = row.get(i - 1);
      long outer = foot + side.joint() + p.width();
      long extent = side.extent(i, foot, outer, i == row.size());
      for (int n = 0; n < p.pieces().size(); n++) {
        String id = pile.pieces().get(p.pieces().get(n)).id();
        out.add(new FromStock.Taken(mark + i, n + 1, id, extent));
      }
      foot = outer;
    }
    return out;
  }
}
