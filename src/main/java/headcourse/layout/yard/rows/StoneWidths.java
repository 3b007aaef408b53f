package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.LongStream;

/** How wide the next stone of a state may be tried. */
final class StoneWidths {
  /** How many pieces next shorter than the partner's are tried on the right. */
  private static final int NEAR = 2;

  private final Store store;

  StoneWidths(Store store) {
    this.store = store;
  }

  /**
   * Where a stone is to stand.
   *
   * @param n the state before it
   * @param i its number on its side, from 1
   * @param foot where it begins
   * @param last whether it is the last
   * @param least the least width
   * @param most the greatest
   */
  record Place(Node n, RowSide side, int i, long foot, boolean last, long least, long most) {
    /** Every width, greatest first. */
    long[] every() {
      return LongStream.rangeClosed(least, most).map(w -> least + most - w).toArray();
    }

    private long extent(long width) {
      return side.extent(i, foot, foot + side.joint() + width, last);
    }
  }

  /** The widths that pieces give, greatest first; the partner's; and where the row is to end. */
  long[] whole(Place p) {
    Pile.Head head = store.pile.heads().get(p.n.head);
    int[] of = store.of(p.n.head, false);
    List<Long> out = new ArrayList<>();
    boolean paired = head.mirror() && p.n.turn == 1 && p.n.partner > 0;
    long w = paired ? Math.max(p.least, Math.min(p.n.partner, p.most)) : p.most;
    if (p.most < p.least) {
      return new long[0];
    }
    if (paired) {
      out.add(w);
    }
    int from = store.from(of, p.extent(w));
    if (!paired && from < of.length) {
      out.add(w);
    }
    int near = 0;
    for (int k = from - 1; k >= 0 && w >= p.least && (!paired || near < NEAR); k--) {
      if (p.n.used.get(of[k]) || same(of, k, p.n.used, from)) {
        continue;
      }
      w = down(p, w, store.usable(of[k]));
      if (w >= p.least) {
        out.add(w);
        near++;
      }
    }
    if (p.last) {
      ends(p, out);
    }
    return out.stream().mapToLong(x -> x).toArray();
  }

  /** Whether the next longer piece that is still there is just as long. */
  private boolean same(int[] of, int k, BitSet used, int from) {
    for (int j = k + 1; j < from && store.usable(of[j]) == store.usable(of[k]); j++) {
      if (!used.get(of[j])) {
        return true;
      }
    }
    return false;
  }

  /** The greatest width no greater than one that a length gives; less than the least for none. */
  private long down(Place p, long from, long usable) {
    long w = from;
    while (w >= p.least) {
      long over = p.extent(w) - usable;
      if (over <= 0) {
        return w;
      }
      store.steps.count();
      w -= p.side.fanned() ? Math.max(1, over / 2) : over;
    }
    return w;
  }

  /** Ends nearest the target that a last stone may reach, when sawn. */
  private static void ends(Place p, List<Long> out) {
    long best = -1;
    long off = Long.MAX_VALUE;
    long longest = -1;
    for (long w = p.most; w >= p.least; w--) {
      long b = p.side.bearingOff(p.foot + p.side.joint() + w);
      if (b >= 0 && longest < 0) {
        longest = w;
      }
      if (b >= 0 && b < off) {
        off = b;
        best = w;
      }
    }
    for (long w : new long[] {longest, best}) {
      if (w >= 0 && !out.contains(w)) {
        out.add(w);
      }
    }
  }
}
