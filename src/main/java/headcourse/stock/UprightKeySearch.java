package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.flat.FlatReading;
import headcourse.stock.PileReader.Lying;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import headcourse.stock.pile.PileSolver;
import headcourse.stock.pile.PileSupply;
import headcourse.stock.pile.PileTypes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Function;

/**
 * Settles keys and stones of upright heads from one pile. Many keys are bounded at once, each side
 * allowing what it allows beside any of them; what may still be better than the best choice is
 * halved, until each head has one key.
 */
final class UprightKeySearch {
  /** What setting up one search costs at most, in steps, for each pair of heads. */
  private static final long SET_UP = 12_000;

  /** So few choices of keys are looked at one by one. */
  private static final int FEW = 3;

  /** How many choices of pieces for the keys are looked at. */
  private static final int CHOICES = 60;

  private final Job job;
  private final List<Opening> openings;
  private final PileReader yard;
  private final List<UprightKeys> keys;
  private final KeysTogether together;
  private Set<String> gone = Set.of();
  private KeyedPile best;
  private Pile.Cost bound;
  private boolean ruledOut = true;
  private long steps;

  UprightKeySearch(Job job, List<Opening> openings, Function<Opening, FlatReading> read) {
    this.job = job;
    this.openings = openings;
    this.yard = new PileReader(job);
    this.keys = openings.stream().map(o -> new UprightKeys(job, o, read)).toList();
    this.together = new KeysTogether(openings, keys, yard);
  }

  /** Whether all was looked at, so that no choice means that there is none. */
  boolean ruledOut() {
    return ruledOut;
  }

  /** The best choice without the pieces that are gone, or none. */
  Optional<KeyedPile> best(Set<String> without) {
    gone = without;
    List<List<UprightKey>> all = together.all(gone);
    if (all.stream().anyMatch(List::isEmpty)) {
      return Optional.empty();
    }
    PriorityQueue<UprightNode> open = new PriorityQueue<>(UprightNode.BEST);
    open.addAll(UprightNode.bySawn(all));
    UprightNode first = open.peek();
    if (!first.settled()) {
      // Those nearest the target are often as good as any.
      List<UprightKey> near = together.nearest(first.keys(), 0, gone);
      if (near != null) {
        settled(near, job.steps() / 8);
      }
    }
    int born = open.size();
    while (!open.isEmpty() && may(open.peek().floor())) {
      UprightNode node = open.remove();
      long rest = job.steps() - steps;
      if (best == null ? rest <= job.steps() / 4 * 3 : rest <= 0) {
        open.add(node);
        break;
      }
      if (node.settled()) {
        Pile.Cost least = settled(node.keys().stream().map(of -> of.get(0)).toList(), rest);
        bound(least);
        continue;
      }
      Pile.Cost least = node.choices() <= FEW ? node.floor() : relaxed(node, Math.max(1, rest / 4));
      if (least != null && may(least)) {
        for (UprightNode half : node.over(least).halves(born)) {
          open.add(half);
        }
        born += 2;
      }
    }
    open.forEach(n -> bound(n.floor()));
    return answer();
  }

  private Optional<KeyedPile> answer() {
    if (best == null) {
      ruledOut = bound == null;
      return ruledOut ? Optional.empty() : any(gone);
    }
    Pile.Answer a = best.answer();
    boolean proved = bound == null || bound.compareTo(a.cost()) >= 0;
    ruledOut = proved;
    Pile.Answer told =
        new Pile.Answer(a.heads(), a.cost(), proved ? a.cost() : bound, proved, steps);
    return Optional.of(new KeyedPile(best.sides(), told, best.taken()));
  }

  long steps() {
    return steps;
  }

  /** Some choice soon found, the best or not, or none. */
  Optional<KeyedPile> any(Set<String> without) {
    gone = without;
    List<List<UprightKey>> all = together.all(gone);
    for (int i = 0; i < KeysTogether.PARTS && all.stream().noneMatch(List::isEmpty); i++) {
      List<UprightKey> of = together.nearest(all, i, gone);
      List<List<Lying>> taken = of == null ? null : together.pieces(of, gone);
      if (taken == null) {
        continue;
      }
      Set<String> less = new LinkedHashSet<>(gone);
      taken.forEach(t -> t.forEach(p -> less.add(p.id())));
      Pile pile = new Pile(pile(less), of.stream().map(k -> k.head(k.left(), k.right())).toList());
      Pile.Answer a = PileSolver.any(pile);
      if (!a.heads().isEmpty()) {
        return Optional.of(new UprightBuilder(openings, pile).pile(of, taken, a));
      }
    }
    return Optional.empty();
  }

  /** Whether what costs at least so much may be better than the best choice. */
  private boolean may(Pile.Cost floor) {
    return best == null || floor.compareTo(best.answer().cost()) < 0;
  }

  private void bound(Pile.Cost one) {
    if (one != null && may(one)) {
      bound = bound == null || one.compareTo(bound) < 0 ? one : bound;
    }
  }

  /** What the stones must cost less than beside keys of which so much is sawn off. */
  private Pile.Cost beat(long sawn) {
    return best == null ? null : best.answer().cost().plus(-sawn, 0, 0);
  }

  private List<Pile.Piece> pile(Set<String> without) {
    List<Pile.Piece> out = new ArrayList<>();
    for (Lying p : yard.pieces(without)) {
      List<Boolean> fits = openings.stream().map(o -> yard.fits(p.item(), o, false)).toList();
      out.add(new Pile.Piece(p.id(), p.usable(), fits));
    }
    return out;
  }

  /**
   * Looks for stones with these keys that cost less than the best choice.
   *
   * @return what none of them costs less than, or null where none is better
   */
  private Pile.Cost settled(List<UprightKey> of, long limit) {
    List<List<Lying>> shortest = together.pieces(of, gone);
    if (shortest == null) {
      return null;
    }
    KeyPieces.Choices choices = choices(of, shortest);
    if (choices.all().size() < 2) {
      return settled(of, shortest, limit);
    }
    List<Lying> lying = yard.pieces(gone);
    long from = steps;
    Pile.Cost least = choices.complete() ? null : Pile.Cost.NONE;
    for (KeyPieces.Choice c : choices.all()) {
      List<List<Lying>> taken = new ArrayList<>();
      for (int[] k : c.keys()) {
        taken.add(k == null ? List.of() : Arrays.stream(k).mapToObj(lying::get).toList());
      }
      Pile.Cost one = settled(of, taken, Math.max(1, limit - (steps - from)));
      least = one == null || least != null && least.compareTo(one) <= 0 ? least : one;
    }
    return least;
  }

  /** Where pieces for the keys are not all good for the same stones, longer ones may be better. */
  private KeyPieces.Choices choices(List<UprightKey> of, List<List<Lying>> shortest) {
    List<ChangeProblem.Piece> pieces = new ArrayList<>();
    for (Lying p : yard.pieces(gone)) {
      boolean[] fits = new boolean[of.size()];
      boolean[] key = new boolean[of.size()];
      for (int h = 0; h < fits.length; h++) {
        fits[h] = yard.fits(p.item(), openings.get(h), false);
        key[h] = !shortest.get(h).isEmpty() && yard.fits(p.item(), openings.get(h), true);
      }
      pieces.add(new ChangeProblem.Piece(p.id(), p.usable(), fits, key));
    }
    long[] widths = new long[of.size()];
    int[] copies = new int[of.size()];
    for (int h = 0; h < widths.length; h++) {
      widths[h] = shortest.get(h).isEmpty() ? -1 : of.get(h).from();
      copies[h] = openings.get(h).count();
    }
    return KeyPieces.of(pieces, widths, copies, CHOICES);
  }

  private Pile.Cost settled(List<UprightKey> of, List<List<Lying>> taken, long limit) {
    long sawn = 0;
    Set<String> less = new LinkedHashSet<>(gone);
    for (int h = 0; h < of.size(); h++) {
      sawn += UprightKeys.sawn(of.get(h), taken.get(h));
      taken.get(h).forEach(p -> less.add(p.id()));
    }
    if (!may(new Pile.Cost(sawn, 0, 0))) {
      return null;
    }
    List<Pile.Head> heads = of.stream().map(k -> k.head(k.left(), k.right())).toList();
    Pile pile = new Pile(pile(less), heads);
    Pile.Answer a = solve(pile, beat(sawn), limit);
    if (!a.heads().isEmpty()) {
      Pile.Cost cost = a.cost().plus(sawn, 0, 0);
      Pile.Answer all =
          new Pile.Answer(a.heads(), cost, a.bound().plus(sawn, 0, 0), a.proved(), a.steps());
      best = new UprightBuilder(openings, pile).pile(of, taken, all);
    }
    return a.proved() ? null : a.bound().plus(sawn, 0, 0);
  }

  private Pile.Answer solve(Pile pile, Pile.Cost beat, long limit) {
    if (!PileSupply.suffices(pile, new PileTypes(pile))) {
      return new Pile.Answer(List.of(), null, Pile.Cost.NONE, true, 1);
    }
    Pile.Answer a = PileSolver.solve(pile, beat, Math.max(1, limit));
    long pieces = pile.pieces().size();
    long setUp = Math.min(SET_UP, 13 * pieces * pieces);
    steps += a.steps() + setUp * openings.size() * openings.size();
    return a;
  }

  /**
   * Bounds all keys of a node at once, and tries those that the stones found go with.
   *
   * @return what none costs less than, or null where none is better
   */
  private Pile.Cost relaxed(UprightNode node, long limit) {
    List<Pile.Head> heads = new ArrayList<>();
    for (List<UprightKey> of : node.keys()) {
      List<AnyKeySide> both = AnyKeySide.both(of);
      heads.add(of.get(0).head(both.get(0), both.get(1)));
    }
    Pile pile = new Pile(pile(gone), heads);
    Pile.Answer a = solve(pile, beat(node.sawn()), limit);
    if (a.proved() && a.heads().isEmpty()) {
      return null;
    }
    if (!a.heads().isEmpty()) {
      tried(node, pile, a);
    }
    return a.bound().plus(node.sawn(), 0, 0);
  }

  /** Tries the keys that the stones of a bound go with. */
  private void tried(UprightNode node, Pile pile, Pile.Answer a) {
    Set<String> used = new LinkedHashSet<>();
    for (Pile.Chosen c : a.heads()) {
      for (List<Pile.Picked> row : List.of(c.left(), c.right())) {
        row.forEach(p -> p.pieces().forEach(i -> used.add(pile.pieces().get(i).id())));
      }
    }
    List<UprightKey> of = new ArrayList<>();
    for (int h = 0; h < openings.size(); h++) {
      Pile.Chosen c = a.heads().get(h);
      List<PileSide> left = ((AnyKeySide) pile.heads().get(h).left()).holding(c.left());
      List<PileSide> right = ((AnyKeySide) pile.heads().get(h).right()).holding(c.right());
      UprightKeys mine = keys.get(h);
      Comparator<UprightKey> fewest =
          Comparator.comparingLong((UprightKey k) -> off(k, c)).thenComparingLong(k -> -k.width());
      Optional<UprightKey> one =
          node.keys().get(h).stream()
              .filter(k -> left.contains(k.left()) && right.contains(k.right()))
              .filter(k -> spare(mine.pieces(k, yard.pieces(gone)), used))
              .min(fewest);
      if (one.isEmpty()) {
        return;
      }
      mine.pieces(one.get(), yard.pieces(gone)).forEach(p -> used.add(p.id()));
      of.add(one.get());
    }
    settled(of, Math.max(1, (job.steps() - steps) / 4));
  }

  private static boolean spare(List<Lying> pieces, Set<String> used) {
    return pieces != null && pieces.stream().noneMatch(p -> used.contains(p.id()));
  }

  private static long off(UprightKey k, Pile.Chosen c) {
    return off(k.left(), c.left()) + off(k.right(), c.right());
  }

  private static long off(PileSide side, List<Pile.Picked> row) {
    long foot = side.start();
    for (Pile.Picked p : row) {
      foot += side.joint() + p.width();
    }
    return side.bearingOff(foot);
  }
}
