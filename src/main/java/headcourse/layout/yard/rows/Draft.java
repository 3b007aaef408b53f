package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;

/** A choice that is known, of which some stones stay as they are and the others are set anew. */
final class Draft {
  private final List<Node> keys = new ArrayList<>();
  private final List<List<List<Node>>> rows = new ArrayList<>();
  private final boolean[] freeHead;
  private final boolean[][] freePlace;

  /** All stones of a choice, none of them free yet. */
  Draft(Node whole, int heads) {
    freeHead = new boolean[heads];
    freePlace = new boolean[heads][];
    for (int h = 0; h < heads; h++) {
      rows.add(List.of(new ArrayList<>(), new ArrayList<>()));
      keys.add(null);
    }
    for (Node n = whole; n.before != null; n = n.before) {
      if (n.side < 0) {
        keys.set(n.head, n);
      } else {
        rows.get(n.head).get(n.side).add(0, n);
      }
    }
    for (int h = 0; h < heads; h++) {
      freePlace[h] = new boolean[length(h) + 1];
    }
  }

  /** How many stones the longer side of a head has. */
  int length(int h) {
    return Math.max(rows.get(h).get(0).size(), rows.get(h).get(1).size());
  }

  /** Nothing is free. */
  void keep() {
    java.util.Arrays.fill(freeHead, false);
    for (boolean[] of : freePlace) {
      java.util.Arrays.fill(of, false);
    }
  }

  /** The whole head is set anew, its key with it. */
  void free(int h) {
    freeHead[h] = true;
  }

  /** The stones at a place, from 1, of both sides are set anew. */
  void free(int h, int place) {
    freePlace[h][place] = true;
  }

  /** The key as it stays, or null where it is free. */
  Node fixedKey(int h) {
    return freeHead[h] ? null : keys.get(h);
  }

  /** A stone as it stays, or null where it is free. */
  Node fixed(int h, int s, int place) {
    List<Node> of = rows.get(h).get(s);
    boolean free = freeHead[h] || place > of.size() || freePlace[h][place];
    return free ? null : of.get(place - 1);
  }

  /** The pieces of all that stays, as used. */
  long[] held(int words) {
    long[] used = new long[words];
    for (int h = 0; h < keys.size(); h++) {
      hold(fixedKey(h), used);
      for (int s = 0; s < 2; s++) {
        for (int i = 1; i <= rows.get(h).get(s).size(); i++) {
          hold(fixed(h, s, i), used);
        }
      }
    }
    return used;
  }

  private static void hold(Node n, long[] used) {
    for (int k : n == null ? new int[0] : n.pieces) {
      Store.set(used, k);
    }
  }
}
