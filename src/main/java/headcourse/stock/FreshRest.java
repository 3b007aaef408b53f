package headcourse.stock;

import headcourse.stock.ChangeProblem.Found;
import headcourse.stock.ChangeProblem.Price;
import headcourse.stock.ChangeProblem.Rows;
import headcourse.stock.fan.FanPile;
import headcourse.stock.fan.FanSolver;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSolver;
import java.util.ArrayList;
import java.util.List;

/**
 * What is left of heads chosen anew, whatever was planned: by the solvers of whole piles where each
 * mirrored head has as many stones there on both sides, or where heads are fans; else by a complete
 * search.
 */
final class FreshRest {
  /** How many choices of pieces for the keys are looked at. */
  private static final int CHOICES = 60;

  private final ChangeProblem problem;
  private final long limit;

  /**
   * @param problem what is left; what was planned does not count
   * @param limit how many steps it may take
   */
  FreshRest(ChangeProblem problem, long limit) {
    this.problem = new ChangeProblem(problem.pieces(), problem.heads(), true);
    this.limit = limit;
  }

  FewestChanges.Result solve() {
    return whole()
        ? asPile()
        : new FewestChanges(List.of(problem), Integer.MAX_VALUE, limit).solve();
  }

  /** Whether the rest is a pile and heads by itself. */
  private boolean whole() {
    boolean both =
        problem.heads().stream().allMatch(h -> h.left().side() != null && h.right().side() != null);
    return both && (fanned() ? problem.heads().stream().allMatch(FreshRest::even) : level());
  }

  private boolean fanned() {
    return problem.heads().stream().anyMatch(h -> h.left().side().fanned());
  }

  private static boolean even(Rows h) {
    return h.left().each() == h.right().each();
  }

  /** Whether each mirrored head has as many stones there on both sides. */
  private boolean level() {
    return problem.heads().stream()
        .allMatch(h -> !h.mirror() || h.left().there().size() == h.right().there().size());
  }

  private FewestChanges.Result asPile() {
    int n = problem.heads().size();
    long[] widths = new long[n];
    int[] copies = new int[n];
    for (int h = 0; h < n; h++) {
      Rows head = problem.heads().get(h);
      widths[h] = head.key() == null ? -1 : head.key().width();
      copies[h] = head.copies();
    }
    KeyPieces.Choices keys = KeyPieces.of(problem.pieces(), widths, copies, CHOICES);
    FewestChanges.Result best = null;
    boolean proved = keys.complete();
    long steps = 0;
    for (KeyPieces.Choice c : keys.all()) {
      if (best != null && c.sawn() > best.found().price().cost().sawn()) {
        break;
      }
      FewestChanges.Result r = answer(c, Math.max(1, limit - steps));
      steps += r.steps();
      proved &= r.proved();
      if (r.found() != null
          && (best == null || r.found().price().compareTo(best.found().price()) < 0)) {
        best = r;
      }
    }
    return new FewestChanges.Result(
        best == null ? -1 : 0, best == null ? null : best.found(), 0, proved, steps);
  }

  private FewestChanges.Result answer(KeyPieces.Choice keys, long steps) {
    boolean[] held = new boolean[problem.pieces().size()];
    for (int[] of : keys.keys()) {
      for (int c = 0; of != null && c < of.length; c++) {
        held[of[c]] = true;
      }
    }
    List<Integer> free = new ArrayList<>();
    List<Pile.Piece> pieces = new ArrayList<>();
    for (int i = 0; i < held.length; i++) {
      if (!held[i]) {
        ChangeProblem.Piece p = problem.pieces().get(i);
        List<Boolean> fits = new ArrayList<>();
        for (boolean b : p.fits()) {
          fits.add(b);
        }
        free.add(i);
        pieces.add(new Pile.Piece(p.id(), p.usable(), fits));
      }
    }
    Pile.Answer a = fanned() ? fans(pieces, steps) : upright(pieces, steps);
    if (a.heads().isEmpty()) {
      return new FewestChanges.Result(-1, null, 0, a.proved(), a.steps());
    }
    List<List<List<Pile.Picked>>> sides = new ArrayList<>();
    for (Pile.Chosen c : a.heads()) {
      sides.add(List.of(back(c.left(), free), back(c.right(), free)));
    }
    long unlike = level() ? 0 : imbalance(sides);
    Pile.Cost cost = a.cost().plus(keys.sawn(), unlike, 0);
    Found found = new Found(keys.keys(), sides, 0, new Price(0, cost));
    return new FewestChanges.Result(0, found, 0, a.proved() && level(), a.steps());
  }

  private Pile.Answer upright(List<Pile.Piece> pieces, long steps) {
    List<Pile.Head> heads = new ArrayList<>();
    for (Rows h : problem.heads()) {
      boolean alike = even(h);
      heads.add(
          new Pile.Head(
              h.copies(),
              h.mirror(),
              alike ? h.left().each() : 0,
              h.min(),
              h.max(),
              h.jump(),
              alike ? h.left().side() : new CountedSide(h.left().side(), h.left().each()),
              alike ? h.right().side() : new CountedSide(h.right().side(), h.right().each())));
    }
    return PileSolver.solve(new Pile(pieces, heads), steps);
  }

  /** Where one side has more stones there than the other, how alike they come out is left open. */
  private Pile.Answer fans(List<Pile.Piece> pieces, long steps) {
    List<FanPile.Head> heads = new ArrayList<>();
    for (Rows h : problem.heads()) {
      FanPile.Fan fan = new FanPile.Fan(h.left().side(), h.right().side(), 0);
      heads.add(
          new FanPile.Head(
              h.copies(),
              h.mirror() && level(),
              h.left().each(),
              h.min(),
              h.max(),
              h.jump(),
              List.of(fan)));
    }
    return FanSolver.solve(new FanPile(pieces, heads), steps).stones();
  }

  /** How unlike the sides of mirrored heads are, pairs that are there left out. */
  private long imbalance(List<List<List<Pile.Picked>>> sides) {
    long sum = 0;
    for (int k = 0; k < sides.size(); k++) {
      Rows h = problem.heads().get(k);
      List<Long> l = new ArrayList<>(h.left().there());
      List<Long> r = new ArrayList<>(h.right().there());
      int there = Math.min(l.size(), r.size());
      sides.get(k).get(0).forEach(p -> l.add(p.width()));
      sides.get(k).get(1).forEach(p -> r.add(p.width()));
      for (int i = there; h.mirror() && i < Math.max(l.size(), r.size()); i++) {
        long a = i < l.size() ? l.get(i) : 0;
        long b = i < r.size() ? r.get(i) : 0;
        sum += h.copies() * Math.abs(a - b);
      }
    }
    return sum;
  }

  private static List<Pile.Picked> back(List<Pile.Picked> row, List<Integer> free) {
    return row.stream()
        .map(p -> new Pile.Picked(p.width(), p.pieces().stream().map(free::get).toList()))
        .toList();
  }
}
