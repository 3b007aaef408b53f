package headcourse.stock;

import java.util.Arrays;

/**
 * One side of a head with the extents of all stones that may stand on it: feet are counted from the
 * key's joint, and what may not be is −1. Worked out foot by foot as they are asked for.
 */
final class FanRows {
  static final short NOT = -1;

  final PileSide side;
  final int joint;
  final int min;
  final int max;

  /** The greatest foot. */
  final int last;

  /** The most stones. */
  final int most;

  private final long start;
  private final int longest;
  private final int rules;
  private final short[][][] on;
  private final short[][][] ends;
  private long work;

  /**
   * @param head the head
   * @param side its side
   * @param longest usable length of the longest piece
   * @param pieces how many pieces there are
   */
  FanRows(FanPile.Head head, PileSide side, long longest, int pieces) {
    this.side = side;
    this.start = side.start();
    this.joint = (int) side.joint();
    this.min = (int) head.min();
    this.max = (int) Math.min(head.max(), longest);
    // Extents are kept short; no piece is so long.
    this.longest = (int) Math.min(longest, Short.MAX_VALUE);
    this.last = (int) Math.max(0, side.lastEnd() - start);
    int fill = Math.min(pieces / head.copies(), last / Math.max(1, min + joint));
    this.most = head.eachSide() > 0 ? Math.min(fill, head.eachSide()) : fill;
    this.rules = Math.max(1, side.regularFrom());
    this.on = new short[rules + 1][last + 1][];
    this.ends = new short[rules + 1][last + 1][];
  }

  /** Extents of stone {@code index} from a foot to a joint, by width from the least. */
  short[] on(int index, int foot) {
    int r = Math.min(index, rules);
    if (on[r][foot] == null) {
      fill(r, foot);
    }
    return on[r][foot];
  }

  /** Extents of stone {@code index} from a foot to the end, by width from the least. */
  short[] ends(int index, int foot) {
    on(index, foot);
    return ends[Math.min(index, rules)][foot];
  }

  private void fill(int index, int foot) {
    int widths = Math.max(0, Math.min(max, last - foot - joint) - min + 1);
    short[] a = new short[widths];
    short[] b = new short[widths];
    Arrays.fill(a, NOT);
    Arrays.fill(b, NOT);
    long inner = start + foot;
    for (int w = 0; w < widths; w++) {
      long outer = inner + joint + min + w;
      if (start + last - outer >= joint + min
          && side.jointStands(index, outer)
          && side.stoneFits(index, inner, outer)) {
        a[w] = fitting(side.extent(index, inner, outer, false));
      }
      if (off(foot + joint + min + w) >= 0 && side.endFits(index, inner, outer)) {
        b[w] = fitting(side.extent(index, inner, outer, true));
      }
    }
    work += widths;
    on[index][foot] = a;
    ends[index][foot] = b;
  }

  private short fitting(long extent) {
    return extent > longest ? NOT : (short) extent;
  }

  /** How far the bearing of an end is from its target, pm; negative where it may not end there. */
  long off(int foot) {
    return side.bearingOff(start + foot);
  }

  /** The least foot where it may end. */
  int first() {
    return (int) (side.firstEnd() - start);
  }

  /** From this stone on, all follow one rule. */
  int rules() {
    return rules;
  }

  /** How many extents were worked out. */
  long work() {
    return work;
  }
}
