package headcourse.stock;

import headcourse.stock.ChangeProblem.Found;
import headcourse.stock.ChangeProblem.Price;
import headcourse.stock.ChangeProblem.Rows;
import headcourse.stock.PieceMatch.Demand;
import java.util.ArrayList;
import java.util.List;

/**
 * What is left of heads chosen anew, whatever was planned: by the solver of whole piles where each
 * mirrored head has as many stones there on both sides, else by a complete search.
 */
final class FreshRest {
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
    return whole() ? asPile() : new FewestChanges(List.of(problem), limit).solve();
  }

  /** Whether the rest is a pile and heads by itself. */
  private boolean whole() {
    return problem.heads().stream()
        .allMatch(
            h ->
                h.left().side() != null
                    && h.right().side() != null
                    && (!h.mirror() || h.left().there().size() == h.right().there().size()));
  }

  private FewestChanges.Result asPile() {
    PieceMatch match = new PieceMatch(problem.pieces());
    List<Demand> keys = new ArrayList<>();
    List<Integer> of = new ArrayList<>();
    for (int h = 0; h < problem.heads().size(); h++) {
      Rows head = problem.heads().get(h);
      for (int c = 0; head.key() != null && c < head.copies(); c++) {
        keys.add(new Demand(head.key().width(), h, true));
        of.add(h);
      }
    }
    boolean[] held = new boolean[problem.pieces().size()];
    int[] taken = match.match(keys, held);
    if (taken == null) {
      return new FewestChanges.Result(-1, null, 0, true, 0);
    }
    long sawn = 0;
    List<int[]> keyPieces = new ArrayList<>();
    for (int h = 0; h < problem.heads().size(); h++) {
      Rows head = problem.heads().get(h);
      keyPieces.add(head.key() == null ? null : new int[head.copies()]);
    }
    int[] next = new int[problem.heads().size()];
    for (int d = 0; d < taken.length; d++) {
      held[taken[d]] = true;
      keyPieces.get(of.get(d))[next[of.get(d)]++] = taken[d];
      sawn += match.usable(taken[d]) - keys.get(d).extent();
    }
    return answer(held, keyPieces, sawn);
  }

  private FewestChanges.Result answer(boolean[] held, List<int[]> keyPieces, long sawn) {
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
    Pile.Answer a = PileSolver.solve(new Pile(pieces, heads), limit);
    if (a.heads().isEmpty()) {
      return new FewestChanges.Result(-1, null, 0, a.proved(), a.steps());
    }
    List<List<List<Pile.Picked>>> sides = new ArrayList<>();
    for (Pile.Chosen c : a.heads()) {
      sides.add(List.of(back(c.left(), free), back(c.right(), free)));
    }
    Found found = new Found(keyPieces, sides, 0, new Price(0, a.cost().plus(sawn, 0, 0)));
    return new FewestChanges.Result(0, found, 0, a.proved(), a.steps());
  }

  private static List<Pile.Picked> back(List<Pile.Picked> row, List<Integer> free) {
    return row.stream()
        .map(p -> new Pile.Picked(p.width(), p.pieces().stream().map(free::get).toList()))
        .toList();
  }
}
