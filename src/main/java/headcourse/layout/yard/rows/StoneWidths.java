package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/**
 * How wide the next stone of a state may be tried.
 *
 * @param n the state before it
 * @param i its number on its side, from 1
 * @param foot where it begins
 * @param last whether it is the last
 * @param least the least width
 * @param most the greatest
 */
record StoneWidths(
    Store store, Node n, RowSide side, int i, long foot, boolean last, long least, long most) {
  /** How many pieces next shorter than the partner's are tried on the right. */
  private static final int NEAR = 2;

  /** Every width, greatest first. */
  long[] every() {
    return LongStream.rangeClosed(least, most).map(w -> least + most - w).toArray();
  }

  private long extent(long width) {
    return side.extent(i, foot, foot + side.joint() + width, last);
  }

  /** The widths that pieces give, greatest first; the partner's; and where the row is to end. */
  long[] whole() {
    Pile.Head head = store.pile.heads().get(n.head);
    int[] of = store.of(n.head, false);
    List<Long> out = new ArrayList<>();
    boolean paired = head.mirror() && n.turn == 1 && n.partner > 0;
    long w = paired ? Math.max(least, Math.min(n.partner, most)) : most;
    if (most < least) {
      return new long[0];
    }
    int from = store.from(of, extent(w));
    if (paired || from < of.length) {
      out.add(w);
    }
    long before = -1;
    int near = 0;
    for (int k = from - 1; k >= 0 && w >= least && (!paired || near < NEAR); k--) {
      long usable = store.usable(of[k]);
      if (n.used.get(of[k]) || usable == before) {
        continue;
      }
      before = usable;
      w = down(w, usable);
      if (w >= least) {
        out.add(w);
        near++;
      }
    }
    if (last) {
      ends(out);
    }
    return out.stream().mapToLong(x -> x).toArray();
  }

  /** The greatest width no greater than one that a length gives; less than the least for none. */
  private long down(long from, long usable) {
    long w = from;
    while (w >= least) {
      long over = extent(w) - usable;
      if (over <= 0) {
        return w;
      }
      store.steps.count();
      w -= side.fanned() ? Math.max(1, over / 2) : over;
    }
    return w;
  }

  /** Ends nearest the target that a last stone may reach, when sawn. */
  private void ends(List<Long> out) {
    long best = -1;
    long off = Long.MAX_VALUE;
    long longest = -1;
    for (long w = most; w >= least; w--) {
      long b = side.bearingOff(foot + side.joint() + w);
      if (b >= 0) {
        longest = Math.max(longest, w);
        best = b < off ? w : best;
        off = Math.min(off, b);
      }
    }
    for (long w : new long[] {longest, best}) {
      if (w >= 0 && !out.contains(w)) {
        out.add(w);
      }
    }
  }
}
