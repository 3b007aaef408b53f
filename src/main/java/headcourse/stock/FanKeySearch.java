package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.flat.FlatReading;
import headcourse.stock.FanKeys.Keyed;
import headcourse.stock.PileReader.Lying;
import headcourse.stock.fan.FanCase;
import headcourse.stock.fan.FanDraft;
import headcourse.stock.fan.FanPile;
import headcourse.stock.fan.FanProof;
import headcourse.stock.fan.FanSolver;
import headcourse.stock.fan.FanStore;
import headcourse.stock.fan.FanWays;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileTypes;
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

  /** The same where any choice will do. */
  private static final int TWO = 2;

  /** The same where a proof was too long. */
  private static final int AGAIN = 8;

  private static final int MORE = 16;
  private static final long QUICK = 20_000;

  /** What a choice may take where any will do, in steps. */
  private static final long SOON = 6_000;

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
    this.keys = openings.stream().map(o -> new FanKeys(job, o, openings, read)).toList();
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
    keys(0, new FanSettled[openings.size()], gone, Pile.Cost.NONE);
    ruledOut &= keys.stream().allMatch(FanKeys::complete);
    all.sort(Comparator.comparing((Keys k) -> k.of.floor()));
    steps += stores.stream().mapToLong(FanStore::work).sum() / FanSolver.WORK;
    List<FanCase> cases = all.stream().map(Keys::of).toList();
    FanProof proof = new FanProof(cases);
    quick(proof, cases, FIRST, Math.min(QUICK, job.steps() / 50), FEW);
    proof.run((job.steps() - steps) / 3);
    if (proof.best() != null) {
      quick(proof, cases, AGAIN, job.steps() / 25, MORE);
      proof.run(job.steps() - steps - proof.steps());
    }
    steps += proof.steps();
    Pile.Cost bound = proof.floor();
    if (!ruledOut || !proof.complete()) {
      bound = least.compareTo(bound) < 0 ? least : bound;
    }
    FanDraft best = proof.best();
    if (best == null) {
      ruledOut &= bound.compareTo(Pile.Cost.ANY) >= 0;
      return ruledOut ? Optional.empty() : any(gone);
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
    PileTypes types = types(lying);
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
      if (one == null && given() < 2) {
        return null;
      }
      least = one == null ? least : least.plus(one.sawn(), 0, one.bearing());
    }
    // One of several keys of a given width may have to be ordered, and saws off nothing then.
    return given() < 2 ? least : new Pile.Cost(0, 0, least.bearing());
  }

  /** How many heads have keys whose widths are given. */
  private long given() {
    return openings.stream().filter(o -> o.head().key() != null && !KeySearch.open(o)).count();
  }

  private PileTypes types(List<Lying> of) {
    List<Pile.Piece> pieces = new ArrayList<>();
    for (Lying p : of) {
      List<Boolean> fits = openings.stream().map(o -> yard.fits(p.item(), o, false)).toList();
      pieces.add(new Pile.Piece(p.id(), p.usable(), fits));
    }
    return new PileTypes(new Pile(pieces, List.of()));
  }

  private FanSettled settled(int h, Keyed k) {
    String name = k.name() + k.pieces().stream().map(Lying::id).toList();
    return settled
        .get(h)
        .computeIfAbsent(
            name, x -> new FanSettled(openings.get(h), h, k, stores.get(h), yard, lying));
  }

  private void keys(int settled, FanSettled[] heads, Set<String> gone, Pile.Cost floor) {
    if (settled == heads.length) {
      List<FanSettled> of = List.of(heads);
      List<FanWays> ways = of.stream().map(FanSettled::ways).toList();
      List<FanCase> one =
          heads.length == 1 ? List.of() : of.stream().map(FanSettled::alone).toList();
      all.add(new Keys(of, new FanCase(() -> pile(of, gone), ways, stores, one, floor)));
      return;
    }
    int h = KeySearch.order(openings).get(settled);
    List<Keyed> of = keys.get(h).of(yard.pieces(gone));
    int each = (int) Math.pow(CHOICES, 1.0 / openings.size());
    ruledOut &= of.size() <= each;
    for (Keyed k : of.subList(0, Math.min(each, of.size()))) {
      FanSettled s = settled(h, k);
      if (s.floor() != null) {
        Set<String> less = new LinkedHashSet<>(gone);
        k.pieces().forEach(p -> less.add(p.id()));
        heads[h] = s;
        keys(settled + 1, heads, less, floor.plus(s.floor().sawn(), 0, s.floor().bearing()));
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

  long steps() {
    return steps;
  }

  /** Some choice soon found, the best or not, or none. */
  Optional<KeyedPile> any(Set<String> gone) {
    lying = yard.pieces(gone);
    FanStore[] own = new FanStore[openings.size()];
    FanSettled[] of = new FanSettled[openings.size()];
    Set<String> less = new LinkedHashSet<>(gone);
    for (int h : KeySearch.order(openings)) {
      List<Lying> rest = yard.pieces(less);
      Keyed k = keys.get(h).first(rest);
      if (k == null || rest.isEmpty()) {
        return Optional.empty();
      }
      k.pieces().forEach(p -> less.add(p.id()));
      own[h] = new FanStore(FanSettled.head(openings.get(h), k), types(rest), h);
      of[h] = new FanSettled(openings.get(h), h, k, own[h], yard, lying, TWO);
      if (of[h].floor() == null) {
        return Optional.empty();
      }
    }
    List<FanSettled> heads = List.of(of);
    List<FanWays> ways = heads.stream().map(FanSettled::ways).toList();
    FanCase one =
        new FanCase(() -> pile(heads, less), ways, List.of(own), List.of(), Pile.Cost.NONE);
    FanDraft found = one.any(SOON);
    if (found == null) {
      return Optional.empty();
    }
    FanPile.Answer a = one.answer(found, Pile.Cost.NONE, false, 0);
    return Optional.of(new FanBuilder(openings, one.pile(), heads).pile(a));
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
