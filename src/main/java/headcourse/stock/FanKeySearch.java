package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.flat.FlatReading;
import headcourse.stock.FanKeys.Keyed;
import headcourse.stock.PileReader.Lying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Settles keys, striking points and stones of heads of which some are fans, from one pile. What a
 * head's sides can do is worked out once for all its keys; that bounds the cost with each of them,
 * and the proof takes all keys together.
 */
final class FanKeySearch {
  /** How many choices of keys are looked at, for all heads together. */
  private static final int CHOICES = 4_000;

  /** How many keys get a quick choice first, and with how many striking points. */
  private static final int FIRST = 4;

  private static final int FEW = 4;

  /** The same where a proof was too long. */
  private static final int AGAIN = 8;

  private static final int MORE = 16;
  private static final long QUICK = 20_000;

  private final Job job;
  private final List<Opening> openings;
  private final PileReader yard;
  private final List<FanKeys> keys;
  private final List<FanStore> stores = new ArrayList<>();
  private final List<Map<String, FanSettled>> settled = new ArrayList<>();
  private final List<Keys> all = new ArrayList<>();
  private List<Lying> lying = List.of();
  private boolean ruledOut = true;
  private long steps;

  FanKeySearch(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
    this.job = job;
    this.openings = openings;
    this.yard = new PileReader(job);
    this.keys = openings.stream().map(o -> new FanKeys(job, o, read)).toList();
  }

  /** Keys settled for all heads. */
  private record Keys(List<FanSettled> heads, FanCase of) {}

  /** Whether all was looked at, so that no choice means that there is none. */
  boolean ruledOut() {
    return ruledOut;
  }

  /** The best choice without the pieces that are gone, or none. */
  Optional<KeyedPile> best(Set<String> gone) {
    Pile.Cost least = open(gone);
    if (least == null) {
      return Optional.empty();
    }
    keys(new ArrayList<>(), gone, Pile.Cost.NONE);
    all.sort(Comparator.comparing((Keys k) -> k.of.floor()));
    steps += stores.stream().mapToLong(FanStore::work).sum() / FanSolver.WORK;
    List<FanCase> cases = all.stream().map(Keys::of).toList();
    FanProof proof = new FanProof(cases);
    quick(proof, cases, FIRST, Math.min(QUICK, job.steps() / 50), FEW);
    proof.run((job.steps() - steps) / 3);
    quick(proof, cases, AGAIN, job.steps() / 25, MORE);
    proof.run(job.steps() - steps - proof.steps());
    steps += proof.steps();
    Pile.Cost bound = proof.floor();
    if (!ruledOut || !proof.complete()) {
      bound = least.compareTo(bound) < 0 ? least : bound;
    }
    FanDraft best = proof.best();
    if (best == null) {
      ruledOut &= bound.compareTo(FanProof.ANY) >= 0;
      return Optional.empty();
    }
    FanCase of = proof.of();
    Keys k = all.stream().filter(x -> x.of == of).findFirst().orElseThrow();
    boolean proved = bound.compareTo(best.cost()) >= 0;
    ruledOut &= proved;
    FanPile.Answer found = of.answer(best, proved ? best.cost() : bound, proved, steps);
    return Optional.of(new FanBuilder(openings, of.pile(), k.heads).pile(found));
  }

  /**
   * Works out what each head can do by itself.
   *
   * @return what no choice of keys and stones costs less than; null where some head has no key
   */
  private Pile.Cost open(Set<String> gone) {
    lying = yard.pieces(gone);
    List<Pile.Piece> pieces = new ArrayList<>();
    for (Lying p : lying) {
      List<Boolean> fits = openings.stream().map(o -> yard.fits(p.item(), o, false)).toList();
      pieces.add(new Pile.Piece(p.id(), p.usable(), fits));
    }
    PileTypes types = new PileTypes(new Pile(pieces, List.of()));
    Pile.Cost least = Pile.Cost.NONE;
    for (int h = 0; h < openings.size(); h++) {
      List<Keyed> of = keys.get(h).of(lying);
      if (of.isEmpty() || types.size() == 0) {
        return null;
      }
      stores.add(new FanStore(FanSettled.head(openings.get(h), of.get(0)), types, h));
      settled.add(new HashMap<>());
      Pile.Cost one = null;
      for (Keyed k : of) {
        Pile.Cost floor = settled(h, k).floor();
        one = floor != null && (one == null || floor.compareTo(one) < 0) ? floor : one;
      }
      if (one == null) {
        return null;
      }
      least = least.plus(one.sawn(), 0, one.bearing());
    }
    return least;
  }

  private FanSettled settled(int h, Keyed k) {
    String name = k.name() + k.pieces().stream().map(Lying::id).toList();
    return settled
        .get(h)
        .computeIfAbsent(
            name, x -> new FanSettled(openings.get(h), h, k, stores.get(h), yard, lying));
  }

  private void keys(List<FanSettled> heads, Set<String> gone, Pile.Cost floor) {
    int h = heads.size();
    if (h == openings.size()) {
      List<FanSettled> of = List.copyOf(heads);
      List<FanWays> ways = of.stream().map(FanSettled::ways).toList();
      List<FanCase> one = h == 1 ? List.of() : of.stream().map(FanSettled::alone).toList();
      all.add(new Keys(of, new FanCase(() -> pile(of, gone), ways, stores, one, floor)));
      return;
    }
    List<Keyed> of = keys.get(h).of(yard.pieces(gone));
    int each = (int) Math.pow(CHOICES, 1.0 / openings.size());
    ruledOut &= of.size() <= each;
    for (Keyed k : of.subList(0, Math.min(each, of.size()))) {
      FanSettled s = settled(h, k);
      if (s.floor() != null) {
        Set<String> less = new LinkedHashSet<>(gone);
        k.pieces().forEach(p -> less.add(p.id()));
        heads.add(s);
        keys(heads, less, floor.plus(s.floor().sawn(), 0, s.floor().bearing()));
        heads.remove(h);
      }
    }
  }

  private FanPile pile(List<FanSettled> heads, Set<String> gone) {
    List<Pile.Piece> pieces = new ArrayList<>();
    for (Lying p : yard.pieces(gone)) {
      pieces.add(new Pile.Piece(p.id(), p.usable(), heads.stream().map(s -> s.fits(p)).toList()));
    }
    return new FanPile(pieces, heads.stream().map(FanSettled::head).toList());
  }

  /** Quick choices for the keys that promise most, until one can't be beaten. */
  private void quick(FanProof proof, List<FanCase> cases, int first, long some, int fans) {
    int tried = 0;
    for (FanCase c : cases) {
      boolean may = proof.best() == null || c.floor().compareTo(proof.best().cost()) < 0;
      if (may && tried < first && steps + proof.steps() + some < job.steps()) {
        FanCase.Quick quick = c.quick(some, fans);
        steps += quick.steps();
        tried++;
        proof.know(quick.draft(), c);
      }
    }
  }
}
