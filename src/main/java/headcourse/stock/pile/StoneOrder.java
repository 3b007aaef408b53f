package headcourse.stock.pile;

import headcourse.stock.pile.PileDraft.Slot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Mixes the stones of a head as picked stone is: another order of the same stones, side by side as
 * they were, that keeps to all its rules and costs the same.
 */
final class StoneOrder {
  private static final int TRY = 1_000;
  private static final int SHUFFLES = 6;

  private final Pile.Head head;
  private final int[] sides;
  private final List<List<Slot>> stones = new ArrayList<>();
  private final List<List<Slot>> row = new ArrayList<>();
  private final long[] foot;
  private final boolean[] used;
  private long mix;
  private int steps;

  private StoneOrder(Pile.Head head, int[] sides, List<List<Slot>> rows, long seed) {
    this.head = head;
    this.sides = sides;
    this.mix = seed;
    this.foot = new long[sides.length];
    for (int i = 0; i < rows.get(sides[0]).size(); i++) {
      List<Slot> together = new ArrayList<>();
      for (int s : sides) {
        together.add(rows.get(s).get(i));
      }
      stones.add(together);
    }
    this.used = new boolean[stones.size()];
  }

  /** The stones of a head mixed; as they are where no other order is found. */
  static List<List<Slot>> mixed(Pile.Head head, List<List<Slot>> rows, long seed) {
    for (int s = 0; s < 2; s++) {
      for (int i = 1; i <= rows.get(s).size(); i++) {
        if (head.side(s).extra(i) != 0) {
          return rows;
        }
      }
    }
    if (!head.mirror()) {
      List<Slot> left = new StoneOrder(head, new int[] {0}, rows, seed).find().get(0);
      List<Slot> right = new StoneOrder(head, new int[] {1}, rows, seed + 1).find().get(0);
      return List.of(left, right);
    }
    boolean pairs = rows.get(0).size() == rows.get(1).size();
    return pairs ? new StoneOrder(head, new int[] {0, 1}, rows, seed).find() : rows;
  }

  /** By side: the stones outwards. */
  private List<List<Slot>> find() {
    List<List<Slot>> before = new ArrayList<>(stones);
    boolean found = false;
    for (int i = 0; i < SHUFFLES && !found; i++) {
      shuffle();
      steps = 0;
      row.clear();
      Arrays.fill(used, false);
      for (int s = 0; s < sides.length; s++) {
        foot[s] = head.side(sides[s]).start();
      }
      found = next();
    }
    List<List<Slot>> out = new ArrayList<>();
    for (int s = 0; s < sides.length; s++) {
      List<Slot> side = new ArrayList<>();
      for (List<Slot> together : found ? row : before) {
        side.add(together.get(s));
      }
      out.add(side);
    }
    return out;
  }

  private void shuffle() {
    for (int i = stones.size() - 1; i > 0; i--) {
      // Marsaglia's xorshift64.
      mix ^= mix << 13;
      mix ^= mix >>> 7;
      mix ^= mix << 17;
      Collections.swap(stones, i, (int) Math.floorMod(mix, (long) (i + 1)));
    }
  }

  private boolean next() {
    if (row.size() == stones.size()) {
      return true;
    }
    for (int i = 0; i < used.length && ++steps <= TRY; i++) {
      long[] was = foot.clone();
      if (!used[i] && place(stones.get(i))) {
        used[i] = true;
        row.add(stones.get(i));
        if (next()) {
          return true;
        }
        row.remove(row.size() - 1);
        used[i] = false;
      }
      System.arraycopy(was, 0, foot, 0, foot.length);
    }
    return false;
  }

  private boolean place(List<Slot> together) {
    int index = row.size() + 1;
    boolean last = index == stones.size();
    for (int s = 0; s < sides.length; s++) {
      PileSide side = head.side(sides[s]);
      long width = together.get(s).width();
      if (index > 1 && Math.abs(width - row.get(index - 2).get(s).width()) > head.jump()) {
        return false;
      }
      long outer = foot[s] + side.joint() + width;
      if (!side.stands(index, foot[s], outer, last)) {
        return false;
      }
      foot[s] = outer;
    }
    return true;
  }
}
