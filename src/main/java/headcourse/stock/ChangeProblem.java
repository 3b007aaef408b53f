package headcourse.stock;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import java.util.List;

/**
 * Heads set from a pile, of which as little as can be is to change: pieces are gone, or stones came
 * out otherwise than planned. Lengths are ticks.
 *
 * @param pieces what lies in the yard
 * @param heads the heads
 * @param free whether nothing was planned before, so that no change counts
 */
record ChangeProblem(List<Piece> pieces, List<Rows> heads, boolean free) {
  /** Copies the lists. */
  ChangeProblem {
    pieces = List.copyOf(pieces);
    heads = List.copyOf(heads);
  }

  /**
   * A piece.
   *
   * @param id its mark and number
   * @param usable its length less the clean cuts
   * @param fits by head: whether it is high, deep and thick enough for an ordinary stone
   * @param fitsKey the same for the key
   */
  record Piece(String id, long usable, boolean[] fits, boolean[] fitsKey) {}

  /**
   * A stone as planned.
   *
   * @param width its width
   * @param pieces by copy: place of its piece in the list of pieces, or −1 where that is gone
   * @param foot where its outer joint stood
   * @param pinned whether it is cut and must stay
   */
  record Stone(long width, int[] pieces, long foot, boolean pinned) {
    /** How many of its copies have lost their piece. */
    int gone() {
      int n = 0;
      for (int p : pieces) {
        n += p < 0 ? 1 : 0;
      }
      return n;
    }
  }

  /**
   * One side of a head beyond the stones that are there.
   *
   * @param side where its stones may stand, or null where none may follow
   * @param mayEnd whether the stones that are there may make up the side
   * @param each how many stones must follow, or 0 where that is open
   * @param there widths of those that are there, outwards
   * @param before the stones planned
   */
  record Row(PileSide side, boolean mayEnd, int each, List<Long> there, List<Stone> before) {
    /** Copies the lists. */
    Row {
      there = List.copyOf(there);
      before = List.copyOf(before);
    }

    /**
     * Whether a planned stone counts as the same beyond a place: in a fan it would lean otherwise
     * anywhere else.
     *
     * @param i its number, from 1
     * @param end its inner foot and its width
     */
    boolean stays(int i, long end) {
      return !side.fanned() || end + side.joint() == before.get(i - 1).foot();
    }
  }

  /**
   * A head.
   *
   * @param copies how many identical openings
   * @param mirror whether its sides are to be alike
   * @param min least width
   * @param max greatest width
   * @param jump greatest difference between neighbours
   * @param key its key, where that comes from the pile; else null
   * @param left left side
   * @param right right side
   */
  record Rows(
      int copies, boolean mirror, long min, long max, long jump, Stone key, Row left, Row right) {
    Row row(int s) {
      return s == 0 ? left : right;
    }
  }

  /** Copies that must change because their pieces are gone. */
  int forced() {
    int n = 0;
    for (Rows r : heads) {
      n += r.key == null ? 0 : r.key.gone();
      for (int s = 0; s < 2; s++) {
        n += r.row(s).before().stream().mapToInt(Stone::gone).sum();
      }
    }
    return n;
  }

  /** Stones, copies counted, that could change. */
  int all() {
    int n = 0;
    for (Rows r : heads) {
      n += (1 + r.left.before().size() + r.right.before().size()) * r.copies;
    }
    return 2 * n + 8;
  }

  /**
   * Stones as chosen.
   *
   * @param keys by head: the pieces of its key, or null where that is no matter of the pile
   * @param sides by head and side, outwards; pieces as places in the list of pieces
   * @param changes how many copies of stones are not as planned
   * @param price what it costs
   */
  record Found(List<int[]> keys, List<List<List<Pile.Picked>>> sides, int changes, Price price) {}

  /**
   * What a choice costs among those with as few changes.
   *
   * @param moved how many stones planned have another size or stand elsewhere, so that more of
   *     their ticket or their running marks is new than the piece; copies counted
   * @param cost the usual cost, where as few are moved
   */
  record Price(int moved, Pile.Cost cost) implements Comparable<Price> {
    static final Price NONE = new Price(0, Pile.Cost.NONE);

    Price plus(long sawn, long imbalance, long bearing) {
      return new Price(moved, cost.plus(sawn, imbalance, bearing));
    }

    Price moved(int more) {
      return new Price(moved + more, cost);
    }

    @Override
    public int compareTo(Price o) {
      int c = Integer.compare(moved, o.moved);
      return c != 0 ? c : cost.compareTo(o.cost);
    }
  }
}
