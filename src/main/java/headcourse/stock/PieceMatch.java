package headcourse.stock;

import java.util.Arrays;
import java.util.List;

/**
 * Hands pieces to stones so that least is sawn off. The sets of pieces that can be handed out at
 * once are those of a transversal matroid, so taking them from the shortest on wherever the rest
 * can still be served gives the least sum.
 */
final class PieceMatch {
  private final List<ChangeProblem.Piece> pieces;
  private final int[] byLength;

  PieceMatch(List<ChangeProblem.Piece> pieces) {
    this.pieces = pieces;
    Integer[] order = new Integer[pieces.size()];
    Arrays.setAll(order, i -> i);
    Arrays.sort(
        order,
        (a, b) -> {
          int c = Long.compare(pieces.get(a).usable(), pieces.get(b).usable());
          return c != 0 ? c : a - b;
        });
    byLength = Arrays.stream(order).mapToInt(i -> i).toArray();
  }

  /**
   * What needs a piece.
   *
   * @param extent length that it must give
   * @param head number of the head
   * @param key whether it is its key
   */
  record Demand(long extent, int head, boolean key) {}

  boolean serves(int piece, Demand d) {
    ChangeProblem.Piece p = pieces.get(piece);
    return p.usable() >= d.extent() && (d.key() ? p.fitsKey() : p.fits())[d.head()];
  }

  /** What is sawn off the shortest piece for this; −1 where there is none. */
  long least(Demand d) {
    for (int p : byLength) {
      if (serves(p, d)) {
        return pieces.get(p).usable() - d.extent();
      }
    }
    return -1;
  }

  /** By demand its piece, or null where they can't all be served. */
  int[] match(List<Demand> demands, boolean[] held) {
    int[] of = new int[demands.size()];
    Arrays.fill(of, -1);
    int served = 0;
    for (int p : byLength) {
      if (served < of.length && !held[p] && augment(p, demands, of, new boolean[of.length])) {
        served++;
      }
    }
    return served == of.length ? of : null;
  }

  private boolean augment(int piece, List<Demand> demands, int[] of, boolean[] tried) {
    for (int d = 0; d < of.length; d++) {
      if (tried[d] || !serves(piece, demands.get(d))) {
        continue;
      }
      tried[d] = true;
      if (of[d] < 0 || augment(of[d], demands, of, tried)) {
        of[d] = piece;
        return true;
      }
    }
    return false;
  }

  /** Usable length of a piece. */
  long usable(int piece) {
    return pieces.get(piece).usable();
  }
}
