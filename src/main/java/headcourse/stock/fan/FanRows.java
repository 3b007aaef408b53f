package headcourse.stock.fan;

import headcourse.stock.pile.PileSide;
import java.util.Arrays;

/**
 * One side of a head with the extents of all stones that may stand on it: feet are counted from the
 * key's joint, and what may not be is −1. Worked out foot by foot as they are asked for. Where
 * joints follow one rule whatever the key, what is worked out beside one key serves all.
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

  /** How much neighbours may differ. */
  final long jump;

  private final long start;
  private final int longest;
  private final int rules;

  /** Of the first stones, by index and foot. */
  private final short[][][] firstOn;

  private final short[][][] firstEnds;

  /** Of those that follow one rule, by foot from the base on. */
  private final short[][] on;

  private final short[][] ends;
  private final byte[] stands;
  private final long base;
  private long work;

  /**
   * @param head the head
   * @param side its side
   * @param longest usable length of the longest piece
   * @param pieces how many pieces there are
   * @param like a side whose joints may stand at the same places, perhaps beside another key, and
   *     which reaches as far, or null
   */
  FanRows(FanPile.Head head, PileSide side, long longest, int pieces, FanRows like) {
    this.side = side;
    this.start = side.start();
    this.joint = (int) side.joint();
    this.jump = head.jump();
    this.min = (int) head.min();
    this.max = (int) Math.min(head.max(), longest);
    // Extents are kept short; no piece is so long.
    this.longest = (int) Math.min(longest, Short.MAX_VALUE);
    this.base = like != null ? like.base : Math.min(0, start);
    long far = like != null ? like.start + like.last : Math.max(start, side.lastEnd());
    this.last = (int) (far - start);
    int fill = Math.min(pieces / head.copies(), last / Math.max(1, min + joint));
    this.most = head.eachSide() > 0 ? Math.min(fill, head.eachSide()) : fill;
    this.rules = Math.max(1, side.regularFrom());
    this.firstOn = new short[rules][][];
    this.firstEnds = new short[rules][][];
    int feet = (int) (far - base) + 1;
    this.on = like != null ? like.on : new short[feet][];
    this.stands = like != null ? like.stands : new byte[feet];
    this.ends = like != null && like.side.sameEnds(side) ? like.ends : new short[feet][];
  }

  /** Whether what is worked out here serves a side. */
  boolean serves(PileSide other) {
    return side.sameJoints(other)
        && rules == Math.max(1, other.regularFrom())
        && other.lastEnd() <= start + last
        && other.start() >= base;
  }

  /** Extents of stone {@code index} from a foot to a joint, by width from the least. */
  short[] on(int index, int foot) {
    if (index < rules) {
      firstOn[index] = firstOn[index] == null ? new short[last + 1][] : firstOn[index];
      if (firstOn[index][foot] == null) {
        firstOn[index][foot] = joints(index, foot);
      }
      return firstOn[index][foot];
    }
    int at = (int) (start + foot - base);
    if (on[at] == null) {
      on[at] = joints(rules, foot);
    }
    return on[at];
  }

  /** Extents of stone {@code index} from a foot to the end, by width from the least. */
  short[] ends(int index, int foot) {
    if (index < rules) {
      firstEnds[index] = firstEnds[index] == null ? new short[last + 1][] : firstEnds[index];
      if (firstEnds[index][foot] == null) {
        firstEnds[index][foot] = toEnds(index, foot);
      }
      return firstEnds[index][foot];
    }
    int at = (int) (start + foot - base);
    if (ends[at] == null) {
      ends[at] = toEnds(rules, foot);
    }
    return ends[at];
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
    int at = (int) (start + foot - base);
    if (stands[at] == 0) {
      stands[at] = (byte) (side.jointStands(index, start + foot) ? 1 : -1);
    }
    return stands[at] > 0;
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

  /** How many places its tables have. */
  long cells() {
    return (long) (last + 1) * Math.max(1, max - min + 1);
  }

  /** Foot of the key's joint. */
  long start() {
    return start;
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
