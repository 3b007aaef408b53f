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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Settles keys, striking points and stones of heads of which some are fans, from one pile. */
final class FanKeySearch {
  private static final int CHOICES = 60;

  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final PileReader yard;
  private final List<Keyed> keyed = new ArrayList<>();
  private KeyedPile best;
  private Pile.Cost bound;
  private boolean complete = true;
  private boolean several;
  private boolean met;
  private int tried;
  private long steps;

  FanKeySearch(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.yard = new PileReader(job);
  }

  /** The best choice without the pieces that are gone, or none. */
  Optional<KeyedPile> best(Set<String> gone) {
    keys(0, gone, 0);
    if (best == null) {
      return Optional.empty();
    }
    Pile.Answer a = best.answer();
    Pile.Cost least = complete ? bound : Pile.Cost.NONE;
    least = least.compareTo(a.cost()) < 0 ? least : a.cost();
    boolean proved = least.compareTo(a.cost()) >= 0;
    return Optional.of(
        new KeyedPile(
            best.sides(),
            new Pile.Answer(a.heads(), a.cost(), least, proved, steps),
            best.taken()));
  }

  /** Whether all was looked at, so that no choice means that there is none. */
  boolean ruledOut() {
    return complete;
  }

  private void keys(int i, Set<String> gone, long sawn) {
    if (i == openings.size()) {
      stones(gone);
      return;
    }
    List<Lying> lying = yard.pieces(gone);
    List<Keyed> of = new FanKeys(job, openings.get(i), read).of(lying);
    several |= of.size() > 1;
    for (Keyed k : of) {
      long least = sawn + k.leastSawn();
      Pile.Cost floor = new Pile.Cost(least, 0, 0);
      if (best != null && floor.compareTo(best.answer().cost()) >= 0) {
        bound(floor);
        continue;
      }
      if (done()) {
        return;
      }
      Set<String> less = new LinkedHashSet<>(gone);
      k.pieces().forEach(p -> less.add(p.id()));
      keyed.add(k);
      keys(i + 1, less, least);
      keyed.remove(i);
    }
  }

  private void bound(Pile.Cost one) {
    bound = bound == null || one.compareTo(bound) < 0 ? one : bound;
  }

  /** The ends do not depend on the key, so what is off least with one is so with all. */
  private boolean done() {
    if (best != null && met && best.answer().cost().sawn() == 0) {
      if (best.answer().cost().imbalance() == 0) {
        return true;
      }
    }
    if (tried >= CHOICES || steps >= job.steps()) {
      complete = false;
      return true;
    }
    return false;
  }

  /**
   * Sides change places where the right one ends farther in, so that a mirrored job is set out
   * mirrored.
   */
  private static boolean swapped(Keyed k) {
    long l = 0;
    long r = 0;
    for (Stand s : k.stands()) {
      l = Math.max(l, s.left().lastEnd());
      r = Math.max(r, s.right().lastEnd());
    }
    return r < l;
  }

  private void stones(Set<String> gone) {
    tried++;
    List<FanPile.Head> heads = new ArrayList<>();
    List<List<Stand>> stands = new ArrayList<>();
    for (int h = 0; h < keyed.size(); h++) {
      Keyed k = keyed.get(h);
      boolean swap = swapped(k);
      List<Stand> mine = k.stands().stream().map(s -> swap ? s.mirrored() : s).toList();
      FlatTerms terms = mine.get(0).head().terms();
      Integer each = terms.stones().eachSide();
      stands.add(mine);
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
    for (Lying p : yard.pieces(gone)) {
      List<Boolean> fits = new ArrayList<>();
      for (int h = 0; h < keyed.size(); h++) {
        fits.add(fits(p, openings.get(h), stands.get(h)));
      }
      pieces.add(new Pile.Piece(p.id(), p.usable(), fits));
    }
    FanPile pile = new FanPile(pieces, heads);
    // More than one key to try: none of them takes all the steps.
    long rest = Math.max(1, job.steps() - steps);
    FanPile.Answer found = FanSolver.solve(pile, several ? Math.max(1, rest / 3) : rest);
    Pile.Answer a = found.stones();
    steps += a.steps();
    if (!a.heads().isEmpty() || !a.proved()) {
      bound(a.bound());
    }
    if (!a.heads().isEmpty() && (best == null || a.cost().compareTo(best.answer().cost()) < 0)) {
      best = keyedPile(pile, found, stands);
      met = a.cost().bearing() == found.floor().bearing();
    }
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

  private KeyedPile keyedPile(FanPile pile, FanPile.Answer found, List<List<Stand>> stands) {
    List<KeyedPile.Sides> sides = new ArrayList<>();
    List<Pile.Chosen> chosen = new ArrayList<>();
    List<FromStock.Taken> keys = new ArrayList<>();
    List<FromStock.Taken> taken = new ArrayList<>();
    for (int h = 0; h < keyed.size(); h++) {
      Pile.Chosen c = found.stones().heads().get(h);
      Stand s = stands.get(h).get(found.fans().get(h));
      if (swapped(keyed.get(h))) {
        c = new Pile.Chosen(c.right(), c.left());
        s = s.mirrored();
      }
      String mark = openings.get(h).mark();
      List<Lying> key = keyed.get(h).pieces();
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
