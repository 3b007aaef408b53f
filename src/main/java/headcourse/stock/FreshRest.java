package headcourse.stock;

import headcourse.stock.ChangeProblem.Found;
import headcourse.stock.ChangeProblem.Price;
import headcourse.stock.ChangeProblem.Rows;
import java.util.ArrayList;
import java.util.List;

/**
 * What is left of heads chosen anew, whatever was planned: by the solver of whole piles where each
 * mirrored head has as many stones there on both sides, else by a complete search.
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
    return problem.heads().stream()
        .allMatch(
            h ->
                h.left().side() != null
                    && h.right().side() != null
                    && !h.left().side().fanned()
                    && (!h.mirror() || h.left().there().size() == h.right().there().size()));
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
    List<Pile.Head> heads = new ArrayList<>();
    for (Rows h : problem.heads()) {
      boolean alike = h.left().each() == h.right().each();
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
    Pile.Answer a = PileSolver.solve(new Pile(pieces, heads), steps);
    if (a.heads().isEmpty()) {
      return new FewestChanges.Result(-1, null, 0, a.proved(), a.steps());
    }
    List<List<List<Pile.Picked>>> sides = new ArrayList<>();
    for (Pile.Chosen c : a.heads()) {
      sides.add(List.of(back(c.left(), free), back(c.right(), free)));
    }
    Found found = new Found(keys.keys(), sides, 0, new Price(0, a.cost().plus(keys.sawn(), 0, 0)));
    return new FewestChanges.Result(0, found, 0, a.proved(), a.steps());
  }

  private static List<Pile.Picked> back(List<Pile.Picked> row, List<Integer> free) {
    return row.stream()
        .map(p -> new Pile.Picked(p.width(), p.pieces().stream().map(free::get).toList()))
        .toList();
  }
}
