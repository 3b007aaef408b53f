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

  /** The greatest foot that a row is asked for. */
  final int last;

  /** The most stones. */
  final int most;

  private final long start;
  private final int longest;
  private final int rules;
  private final short[][][] on;
  private final short[][][] ends;
  private final byte[] stands;
  private long work;

  /**
   * @param head the head
   * @param side its side
   * @param longest usable length of the longest piece
   * @param pieces how many pieces there are
   * @param like the other side, where its joints may stand at the same places and it reaches as
   *     far, or null
   */
  FanRows(FanPile.Head head, PileSide side, long longest, int pieces, FanRows like) {
    this.side = side;
    this.start = side.start();
    this.joint = (int) side.joint();
    this.min = (int) head.min();
    this.max = (int) Math.min(head.max(), longest);
    // Extents are kept short; no piece is so long.
    this.longest = (int) Math.min(longest, Short.MAX_VALUE);
    this.last = like != null ? like.last : Math.max(0, lastEnd());
    int fill = Math.min(pieces / head.copies(), last / Math.max(1, min + joint));
    this.most = head.eachSide() > 0 ? Math.min(fill, head.eachSide()) : fill;
    this.rules = Math.max(1, side.regularFrom());
    this.on = like != null ? like.on : new short[rules + 1][last + 1][];
    this.stands = like != null ? like.stands : new byte[last + 1];
    this.ends = new short[rules + 1][last + 1][];
  }

  /** Extents of stone {@code index} from a foot to a joint, by width from the least. */
  short[] on(int index, int foot) {
    int r = Math.min(index, rules);
    if (on[r][foot] == null) {
      on[r][foot] = joints(r, foot);
    }
    return on[r][foot];
  }

  /** Extents of stone {@code index} from a foot to the end, by width from the least. */
  short[] ends(int index, int foot) {
    int r = Math.min(index, rules);
    if (ends[r][foot] == null) {
      ends[r][foot] = toEnds(r, foot);
    }
    return ends[r][foot];
  }

  private short[] row(int foot) {
    int widths = Math.max(0, Math.min(max, last - foot - joint) - min + 1);
    short[] row = new short[widths];
    Arrays.fill(row, NOT);
    return row;
  }

  private short[] joints(int index, int foot) {
    short[] row = row(foot);
    for (int w = 0; w < row.length; w++) {
      int to = foot + joint + min + w;
      if (stands(index, to) && side.stoneFits(index, start + foot, start + to)) {
        row[w] = fitting(side.extent(index, start + foot, start + to, false));
      }
    }
    work += row.length;
    return row;
  }

  private boolean stands(int index, int foot) {
    if (index < rules) {
      return side.jointStands(index, start + foot);
    }
    if (stands[foot] == 0) {
      stands[foot] = (byte) (side.jointStands(index, start + foot) ? 1 : -1);
    }
    return stands[foot] > 0;
  }

  private short[] toEnds(int index, int foot) {
    short[] row = row(foot);
    for (int w = Math.max(0, first() - foot - joint - min); w < row.length; w++) {
      int to = foot + joint + min + w;
      if (off(to) >= 0 && side.endFits(index, start + foot, start + to)) {
        row[w] = fitting(side.extent(index, start + foot, start + to, true));
      }
    }
    return row;
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

  /** The greatest foot where it may end. */
  int lastEnd() {
    return (int) (side.lastEnd() - side.start());
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
