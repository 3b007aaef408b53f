package headcourse.stock.pile;

import java.util.Arrays;

/**
 * All ways in which the pieces, from the shortest to the longest, may be given to one side of a
 * head, as a graph: a node stands for what was given so far, and from it the next piece is left
 * lying, or goes to the body of the row, or is its end stone.
 *
 * <p>A node knows how many stones there are, what they cover at most and how wide the widest may
 * be. What has no bearing on the stones still to come is left out, so that nodes fall together.
 */
final class RowGraph {
  static final long NEVER = Long.MAX_VALUE / 8;

  /** No node: the row can't come out any more. */
  static final int NONE = -1;

  private static final int START = 1 << 12;

  private final SweepSide side;
  private final RowShape row;
  private final RowSteps steps;
  private final Pieces pieces;
  private final int most;
  private final long grain;
  private final long leastNeed;
  private final long endMost;
  private final NodeTable table = new NodeTable();
  private int size;
  private long[] key = new long[START];
  private int[] unit = new int[START];
  private int[] skip = new int[START];
  private int[] body = new int[START];
  private int[] end = new int[START];

  /** What the stone of the body covers that is given at a node. */
  private int[] cover = new int[START];

  /** By how much it, or the end stone, covers more than could be of use. */
  private int[] bodyOver = new int[START];

  private int[] endOver = new int[START];

  /** What complete rows take of their blanks at most, and what their stones cover. */
  private final NodeTable complete = new NodeTable();

  private long[] needs = new long[16];
  private long[] covers = new long[16];
  private int ends;
  private int over;
  private boolean full;

  /**
   * The pieces of the pile one by one, ascending.
   *
   * @param type type of each
   * @param covers how much each covers at most; 0 where it does not fit
   */
  record Pieces(int[] type, long[] covers) {}

  /**
   * @param side the side, with nothing given to it
   * @param most the graph is given up beyond so many nodes
   * @param grain widths are rounded up to multiples of this
   */
  RowGraph(SweepSide side, Pieces pieces, int most, long grain) {
    this.side = side;
    this.row = side.row;
    this.steps = new RowSteps(side);
    this.leastNeed = side.leastNeed();
    this.endMost = side.endMost();
    this.pieces = pieces;
    this.most = most;
    this.grain = grain;
    build();
  }

  /** Whether it grew too large to be of use. */
  boolean full() {
    return full;
  }

  int size() {
    return size;
  }

  /** Nothing given yet. */
  int root() {
    return size == 0 ? NONE : 0;
  }

  private static long pack(long stones, long cover, long widest, long last) {
    return ((stones << 24 | cover) << 17 | widest) << 17 | last;
  }

  private void build() {
    int n = pieces.type.length;
    long[] top = new long[n + 1];
    int[] fitting = new int[n + 1];
    for (int u = n - 1; u >= 0; u--) {
      top[u] = Math.max(top[u + 1], pieces.covers[u]);
      fitting[u] = fitting[u + 1] + (pieces.covers[u] > 0 ? 1 : 0);
    }
    full = top[0] >= 1 << 16 || row.stones > 60 || side.mostNeed() >= 1 << 23;
    if (full || node(0, 0, 0, 0, 0, fitting[0], top[0]) == NONE) {
      return;
    }
    int from = 0;
    for (int u = 0; u < n && !full; u++) {
      int to = size;
      table.clear();
      for (int i = from; i < to && !full; i++) {
        follow(i, u, fitting[u + 1], top[u + 1]);
        full = size > most;
      }
      from = to;
    }
    room(size);
  }

  /** The nodes that follow one. */
  private void follow(int i, int u, int left, long wide) {
    int stones = (int) (key[i] >>> 58);
    long sum = key[i] >>> 34 & 0xFFFFFF;
    long widest = key[i] >>> 17 & 0x1FFFF;
    long last = key[i] & 0x1FFFF;
    skip[i] = node(u + 1, stones, sum, widest, last, left, wide);
    long covers = pieces.covers[u];
    if (covers > 0 && stones < side.bodyStones()) {
      long c = steps.cap(covers, stones, widest, last);
      if (steps.wide(c, stones)) {
        body[i] = node(u + 1, stones + 1, sum + c, c, last, left, wide);
        cover[i] = (int) c;
        bodyOver[i] = over;
      }
    }
    if (side.labelled && last == 0 && covers >= side.pair.head().min()) {
      long c = Math.min(covers, endMost);
      end[i] = node(u + 1, stones, sum + c, widest, c, left, wide);
      endOver[i] = over;
    }
  }

  private long up(long x) {
    return (x + grain - 1) / grain * grain;
  }

  private int node(int u, int stones, long cover, long widest, long last, int left, long wide) {
    int inBody = side.bodyStones() - stones;
    boolean endToCome = side.labelled && last == 0;
    int r = inBody + (endToCome ? 1 : 0);
    over = 0;
    if (r == 0) {
      return finished(up(cover), widest, last);
    }
    long more = steps.reach(inBody, stones, widest, last, wide) + (endToCome ? side.endMost() : 0);
    if (left < r || cover + more < side.leastNeed()) {
      return NONE;
    }
    // Beyond this it covers all that may be needed.
    long enough = Math.max(0, side.mostNeed() - r * side.pair.head().min() + last);
    over = (int) Math.max(0, up(cover) - enough);
    long k =
        pack(
            stones,
            up(cover) - over,
            up(steps.widestThatMatters(stones, widest, wide)),
            steps.lastThatMatters(stones, last, widest, wide));
    int known = table.get(k);
    if (known >= 0) {
      return known;
    }
    if (size == key.length) {
      room(2 * size);
    }
    key[size] = k;
    unit[size] = u;
    skip[size] = NONE;
    body[size] = NONE;
    end[size] = NONE;
    table.put(k, size);
    return size++;
  }

  private void room(int nodes) {
    key = Arrays.copyOf(key, nodes);
    unit = Arrays.copyOf(unit, nodes);
    skip = Arrays.copyOf(skip, nodes);
    body = Arrays.copyOf(body, nodes);
    end = Arrays.copyOf(end, nodes);
    cover = Arrays.copyOf(cover, nodes);
    bodyOver = Arrays.copyOf(bodyOver, nodes);
    endOver = Arrays.copyOf(endOver, nodes);
  }

  /** The node of a row that has all its stones. */
  private int finished(long cover, long widest, long last) {
    long e = side.reached(cover, widest, last);
    if (e < row.side.firstEnd()) {
      return NONE;
    }
    long need = row.need(e);
    int known = complete.get(need << 32 | cover);
    if (known >= 0) {
      return -2 - known;
    }
    if (ends == needs.length) {
      needs = Arrays.copyOf(needs, 2 * ends);
      covers = Arrays.copyOf(covers, 2 * ends);
    }
    needs[ends] = need;
    covers[ends] = cover;
    complete.put(need << 32 | cover, ends);
    return -2 - ends++;
  }

  /** The node after a piece that this side does not get. */
  int skipped(int node) {
    return node < 0 ? node : skip[node];
  }

  /** The node after a piece that goes to the body, or is the end stone. */
  int taken(int node, boolean asEnd) {
    return node < 0 ? NONE : asEnd ? end[node] : body[node];
  }

  /** Number of the piece that is given or left lying at a node. */
  int unit(int node) {
    return unit[node];
  }

  /** Stones of the body at a node. */
  int stones(int node) {
    return (int) (key[node] >>> 58);
  }

  /** What the stone covers that is given at a node. */
  long cover(int node, boolean asEnd) {
    return asEnd ? Math.min(pieces.covers[unit[node]], endMost) : cover[node];
  }

  /** By how much that is more than could be of use. */
  long over(int node, boolean asEnd) {
    return asEnd ? endOver[node] : bodyOver[node];
  }

  /** What a complete row takes of its blanks at most. */
  long need(int node) {
    return needs[-2 - node];
  }

  /** What the stones of a complete row cover. */
  long all(int node) {
    return covers[-2 - node];
  }

  /** What any row takes of its blanks at least. */
  long leastNeed() {
    return leastNeed;
  }
}
