package headcourse.layout.yard.rows;

import java.util.Arrays;
import java.util.BitSet;

/**
 * A state of the search: so many stones of the heads set so far, place by place outwards, the left
 * stone of a place before the right one. What it costs, and the least that it can come to.
 */
final class Node extends LayeredSearch.State {
  /** Bits for the number of a head's stones. */
  private static final int PLACES = 12;

  final Node before;
  final int head;
  int way = -1;

  /** The side that the next stone is for. */
  int turn;

  /** The place, from 1, that it is for. */
  int at = 1;

  /** Whether the head has all its stones. */
  boolean whole;

  long[] foot = new long[2];
  long[] last = new long[2];
  int[] set = new int[2];
  boolean[] ended = new boolean[2];

  /** Width of the left stone of this place, once that is known. */
  long partner;

  BitSet used;
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
  Node(BitSet used) {
    before = null;
    head = -1;
    whole = true;
    this.used = used;
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
      foot = from.foot.clone();
      last = from.last.clone();
      set = from.set.clone();
      ended = from.ended.clone();
    }
  }

  Cost cost() {
    return new Cost(changes, moved, shortfall, sawn, imbalance, bearing);
  }

  @Override
  int layer() {
    return whole ? head + 1 << PLACES : (head << PLACES) + 1 + set[0] + set[1];
  }

  /** Head of the states of a layer, or of those to come where one is whole. */
  static int head(int layer) {
    return layer >> PLACES;
  }

  /** How many stones of it a layer has set. */
  static int placed(int layer) {
    return Math.max(0, (layer & (1 << PLACES) - 1) - 1);
  }

  @Override
  long[] key() {
    long[] words = used.toLongArray();
    int n = words.length;
    long[] of = Arrays.copyOf(words, n + 10);
    of[n] = at << 3 | turn << 2 | (ended[0] ? 2 : 0) | (ended[1] ? 1 : 0);
    for (int s = 0; s < 2; s++) {
      of[n + 1 + s] = foot[s];
      of[n + 3 + s] = last[s];
      of[n + 5 + s] = set[s];
    }
    of[n + 7] = way + partner * 65_536;
    of[n + 8] = sawn;
    of[n + 9] = shortfall;
    return of;
  }
}
