package headcourse.layout.yard.rows;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A choice that is known, of which some stones stay as they are and the others are set anew. */
final class Draft {
  /** What stays, by head, side and place; a key has the side −1. */
  private final Map<List<Integer>, Node> stays = new HashMap<>();

  /** All stones of a choice, none of them free yet. */
  Draft(Node whole) {
    for (Node n = whole; n.before != null; n = n.before) {
      stays.put(List.of(n.head, n.side, n.side < 0 ? 0 : n.set[n.side]), n);
    }
  }

  /** The whole head is set anew, its key with it. */
  void free(int h) {
    stays.keySet().removeIf(at -> at.get(0) == h);
  }

  /** The stones at a place, from 1, of both sides are set anew. */
  void free(int h, int place) {
    stays.remove(List.of(h, 0, place));
    stays.remove(List.of(h, 1, place));
  }

  /** A stone or a key as it stays, or null where it is free. */
  Node fixed(int h, int s, int place) {
    return stays.get(List.of(h, s, place));
  }

  /** The pieces of all that stays, as used. */
  BitSet held() {
    BitSet used = new BitSet();
    stays.values().forEach(n -> IntStream.of(n.pieces).forEach(used::set));
    return used;
  }
}
