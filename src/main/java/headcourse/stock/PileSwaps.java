package headcourse.stock;

import headcourse.stock.PileDraft.Slot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Quick choices for heads whose sides need not be alike: so many pieces by lot, then one exchanged
 * after another until the bearing is as near its target as it can be at all.
 */
final class PileSwaps {
  private static final int ROUNDS = 60;

  private final Pile pile;
  private final PileTypes types;
  private final int[] left;
  private long mix = 0x9E3779B97F4A7C15L;
  private long steps;

  PileSwaps(Pile pile, PileTypes types) {
    this.pile = pile;
    this.types = types;
    this.left = types.count.clone();
  }

  long steps() {
    return steps;
  }

  /** A choice that nothing beats, or null. */
  PileDraft find() {
    for (int i = 0; i < ROUNDS; i++) {
      System.arraycopy(types.count, 0, left, 0, left.length);
      PileDraft draft = round(i);
      if (draft != null) {
        return draft;
      }
    }
    return null;
  }

  private PileDraft round(int round) {
    List<List<List<Slot>>> heads = new ArrayList<>();
    long bearing = 0;
    for (int h = 0; h < pile.heads().size(); h++) {
      Pile.Head head = pile.heads().get(h);
      List<List<Slot>> sides = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        List<Slot> side = side(h, s, round);
        if (side == null) {
          return null;
        }
        sides.add(side);
        bearing += head.copies() * PileSearch.leastOff(head.side(s));
      }
      heads.add(sides);
    }
    return new PileDraft(heads, new Pile.Cost(0, 0, bearing));
  }

  private List<Slot> side(int h, int s, int round) {
    Pile.Head head = pile.heads().get(h);
    SweepSums sums = new SweepSums(head, head.side(s));
    for (int n : numbers(sums, head, round)) {
      int[] chosen = draw(h, n);
      if (chosen == null) {
        continue;
      }
      if (settle(h, sums, chosen)) {
        List<Slot> row = ordered(head, s, chosen);
        if (row != null) {
          return row;
        }
      }
      give(head, chosen, 1);
    }
    return null;
  }

  /** How many stones, those first whose mean width is nearest the middle of what is allowed. */
  private List<Integer> numbers(SweepSums sums, Pile.Head head, int round) {
    List<Integer> out = new ArrayList<>();
    for (int n = sums.fewest; n <= sums.most; n++) {
      out.add(n);
    }
    long middle = head.min() / 2 + Math.min(head.max(), types.usable[types.size() - 1]) / 2;
    out.sort(
        (a, b) -> {
          int c = Long.compare(sums.miss(a, a * middle), sums.miss(b, b * middle));
          return c != 0 ? c : a - b;
        });
    java.util.Collections.rotate(out.subList(0, Math.min(3, out.size())), round);
    return out;
  }

  private int[] draw(int h, int n) {
    Pile.Head head = pile.heads().get(h);
    int[] chosen = new int[n];
    Arrays.fill(chosen, -1);
    for (int i = 0; i < n; i++) {
      int from = random(types.size());
      for (int k = 0; k < types.size() && chosen[i] < 0; k++) {
        int t = (from + k) % types.size();
        if (left[t] >= head.copies() && types.whole(head, h, t)) {
          chosen[i] = t;
          left[t] -= head.copies();
        }
      }
      if (chosen[i] < 0) {
        give(head, chosen, 1);
        return null;
      }
    }
    return chosen;
  }

  private void give(Pile.Head head, int[] chosen, int sign) {
    for (int t : chosen) {
      if (t >= 0) {
        left[t] += sign * head.copies();
      }
    }
  }

  /** Exchanges pieces while that brings the end nearer; true where it can't be nearer. */
  private boolean settle(int h, SweepSums sums, int[] chosen) {
    Pile.Head head = pile.heads().get(h);
    long sum = 0;
    for (int t : chosen) {
      sum += types.usable[t];
    }
    while (sums.off(chosen.length, sum) != sums.leastOff()) {
      long nearest = sums.miss(chosen.length, sum);
      int out = -1;
      int in = -1;
      for (int i = 0; i < chosen.length; i++) {
        for (int t = 0; t < types.size(); t++) {
          steps++;
          if (left[t] >= head.copies() && types.whole(head, h, t)) {
            long miss = sums.miss(chosen.length, sum - types.usable[chosen[i]] + types.usable[t]);
            if (miss < nearest) {
              nearest = miss;
              out = i;
              in = t;
            }
          }
        }
      }
      if (out < 0) {
        return false;
      }
      sum += types.usable[in] - types.usable[chosen[out]];
      left[chosen[out]] += head.copies();
      left[in] -= head.copies();
      chosen[out] = in;
    }
    return true;
  }

  private List<Slot> ordered(Pile.Head head, int s, int[] chosen) {
    List<long[]> stones = new ArrayList<>();
    for (int t : chosen) {
      stones.add(new long[] {types.usable[t], t});
    }
    List<long[]> row = new StoneOrder(head, new int[] {s}, stones, 1 + random(1000)).find();
    if (row == null) {
      return null;
    }
    List<Slot> out = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      int[] from = new int[head.copies()];
      Arrays.fill(from, (int) row.get(i)[1]);
      out.add(new Slot(row.get(i)[0] - head.side(s).extra(i + 1), from));
    }
    return out;
  }

  private int random(int n) {
    // Marsaglia's xorshift64.
    mix ^= mix << 13;
    mix ^= mix >>> 7;
    mix ^= mix << 17;
    return (int) Math.floorMod(mix, (long) n);
  }
}
