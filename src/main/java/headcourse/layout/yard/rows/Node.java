package headcourse.layout.yard.rows;

import java.util.Arrays;

/**
 * A state of the search: so many stones of the heads set so far, place by place outwards, the left
 * stone of a place before the right one. What it costs, and the least that it can come to.
 */
final class Node {
  final Node before;
  final int head;
  int way = -1;

  /** The side that the next stone is for. */
  int turn;

  /** The place, from 1, that it is for. */
  int at = 1;

  /** Whether the head has all its stones. */
  boolean whole;

  final long[] foot = new long[2];
  final long[] last = new long[2];
  final int[] set = new int[2];
  final boolean[] ended = new boolean[2];

  /** Width of the left stone of this place, once that is known. */
  long partner;

  long[] used;
  int changes;
  int moved;
  long shortfall;
  long sawn;
  long imbalance;
  long bearing;

  /** The least that this can come to, as it counts. */
  long[] low;

  /** The step that led here: width and pieces of a stone on a side, or a key's pieces. */
  int side = -1;

  long width;
  int[] pieces;

  /** The state before the first head. */
  Node(int words) {
    before = null;
    head = -1;
    whole = true;
    used = new long[words];
  }

  /** One step on, in the same head or in the next. */
  Node(Node from, boolean next) {
    before = from;
    head = next ? from.head + 1 : from.head;
    used = from.used;
    changes = from.changes;
    moved = from.moved;
    shortfall = from.shortfall;
    sawn = from.sawn;
    imbalance = from.imbalance;
    bearing = from.bearing;
    if (next) {
      Arrays.fill(last, -1);
    } else {
      way = from.way;
      turn = from.turn;
      at = from.at;
      partner = from.partner;
      for (int s = 0; s < 2; s++) {
        foot[s] = from.foot[s];
        last[s] = from.last[s];
        set[s] = from.set[s];
        ended[s] = from.ended[s];
      }
    }
  }

  Cost cost() {
    return new Cost(changes, moved, shortfall, sawn, imbalance, bearing);
  }

  /** Whether another state goes on in just the same ways. */
  private boolean goesOnAs(Node o) {
    return head == o.head
        && way == o.way
        && turn == o.turn
        && at == o.at
        && whole == o.whole
        && partner == o.partner
        && sawn == o.sawn
        && shortfall == o.shortfall
        && Arrays.equals(foot, o.foot)
        && Arrays.equals(last, o.last)
        && Arrays.equals(set, o.set)
        && Arrays.equals(ended, o.ended)
        && Arrays.equals(used, o.used);
  }

  /** States that go on in just the same ways are equal. */
  @Override
  public boolean equals(Object o) {
    return o instanceof Node n && goesOnAs(n);
  }

  @Override
  public int hashCode() {
    long x = Arrays.hashCode(used) * 31L + foot[0] * 1_000_003 + foot[1] * 7_919;
    x = x * 31 + last[0] * 131 + last[1] * 17 + sawn + partner * 5 + way;
    x ^= x >>> 29;
    x *= 0x9E3779B97F4A7C15L;
    return (int) (x >>> 32);
  }

  /** Whether this costs no more than another that goes on in the same ways. */
  boolean noWorse(Node o) {
    int c = Integer.compare(changes, o.changes);
    c = c != 0 ? c : Integer.compare(moved, o.moved);
    c = c != 0 ? c : Long.compare(imbalance, o.imbalance);
    return c < 0 || c == 0 && bearing <= o.bearing;
  }
}
