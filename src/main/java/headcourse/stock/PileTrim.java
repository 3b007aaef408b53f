package headcourse.stock;

import headcourse.stock.PileDraft.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A choice for piles that can't do without the saw: for each number of stones and each end the
 * pieces that are least too long, the longest of them cut down to one level until they fit.
 */
final class PileTrim {
  private static final int ORDERS = 40;

  private final Pile pile;
  private final PileTypes types;
  private final int[] left;
  private Pile.Cost cost = Pile.Cost.NONE;

  PileTrim(Pile pile, PileTypes types) {
    this.pile = pile;
    this.types = types;
    this.left = types.count.clone();
  }

  /** A choice, or null. */
  PileDraft find() {
    List<List<List<Slot>>> heads = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      List<List<Slot>> sides = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        List<Slot> side = side(h, s);
        if (side == null) {
          return null;
        }
        sides.add(side);
      }
      heads.add(sides);
      cost = cost.plus(0, imbalance(pile.heads().get(h), sides), 0);
    }
    return new PileDraft(heads, cost);
  }

  static long imbalance(Pile.Head head, List<List<Slot>> sides) {
    long sum = 0;
    List<Slot> l = sides.get(0);
    List<Slot> r = sides.get(1);
    for (int i = 0; head.mirror() && i < Math.max(l.size(), r.size()); i++) {
      long a = i < l.size() ? l.get(i).width() : 0;
      long b = i < r.size() ? r.get(i).width() : 0;
      sum += head.copies() * Math.abs(a - b);
    }
    return sum;
  }

  /** Pieces for one side that end in one place. */
  private record Plan(int[] chosen, long sum, long sawn, long off) {}

  private List<Slot> side(int h, int s) {
    Pile.Head head = pile.heads().get(h);
    PileSide side = head.side(s);
    SweepSums sums = new SweepSums(head, side);
    int[] pieces = available(h, head);
    List<Plan> plans = new ArrayList<>();
    for (int n = sums.fewest; n <= Math.min(sums.most, pieces.length); n++) {
      for (long e = side.firstEnd(); e <= side.lastEnd(); e++) {
        long sum = e - sums.end(n, 0);
        long off = side.bearingOff(e);
        int[] chosen = off < 0 || sum < n * head.min() ? null : choose(head, pieces, n, sum);
        if (chosen != null) {
          long all = 0;
          for (int t : chosen) {
            all += types.usable[t];
          }
          plans.add(new Plan(chosen, sum, all - sum, off));
        }
      }
    }
    plans.sort(Comparator.comparingLong(Plan::sawn).thenComparingLong(Plan::off));
    for (Plan p : plans.subList(0, Math.min(ORDERS, plans.size()))) {
      StoneOrder order = new StoneOrder(head, new int[] {s}, cut(head, p), h + s + 1L);
      List<long[]> row = order.find();
      if (row != null) {
        for (int t : p.chosen) {
          left[t] -= head.copies();
        }
        cost = cost.plus(head.copies() * p.sawn, 0, head.copies() * p.off);
        return PileSweep.slots(head, row, s, 0, 1);
      }
    }
    return null;
  }

  /** Types of the pieces at hand, shortest first; one for so many alike as there are copies. */
  private int[] available(int h, Pile.Head head) {
    List<Integer> out = new ArrayList<>();
    for (int t = 0; t < types.size(); t++) {
      if (types.fits.get(t).get(h) && types.usable[t] >= head.min()) {
        for (int k = 0; k < left[t] / head.copies(); k++) {
          out.add(t);
        }
      }
    }
    return out.stream().mapToInt(t -> t).toArray();
  }

  private long width(Pile.Head head, int type) {
    return Math.min(types.usable[type], head.max());
  }

  /**
   * The shortest run of pieces that covers a sum, each then exchanged for the shortest that does.
   */
  private int[] choose(Pile.Head head, int[] pieces, int n, long sum) {
    int from = 0;
    long covered = 0;
    for (int i = 0; i < n; i++) {
      covered += width(head, pieces[i]);
    }
    while (covered < sum && from + n < pieces.length) {
      covered += width(head, pieces[from + n]) - width(head, pieces[from]);
      from++;
    }
    if (covered < sum) {
      return null;
    }
    boolean[] used = new boolean[pieces.length];
    java.util.Arrays.fill(used, from, from + n, true);
    for (int i = from + n - 1; i >= from; i--) {
      for (int j = 0; j < i; j++) {
        long less = width(head, pieces[i]) - width(head, pieces[j]);
        if (!used[j] && covered - less >= sum) {
          used[i] = false;
          used[j] = true;
          covered -= less;
          break;
        }
      }
    }
    int[] chosen = new int[n];
    int k = 0;
    for (int i = 0; i < pieces.length; i++) {
      if (used[i]) {
        chosen[k++] = pieces[i];
      }
    }
    return chosen;
  }

  /** Cuts the longest down to one level, so that the sum is met. */
  private List<long[]> cut(Pile.Head head, Plan plan) {
    int n = plan.chosen.length;
    long[] w = new long[n];
    long over = -plan.sum;
    for (int i = 0; i < n; i++) {
      w[i] = width(head, plan.chosen[i]);
      over += w[i];
    }
    for (; over > 0; over--) {
      int longest = 0;
      for (int i = 1; i < n; i++) {
        longest = w[i] > w[longest] ? i : longest;
      }
      w[longest]--;
    }
    List<long[]> stones = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      stones.add(new long[] {w[i], plan.chosen[i]});
    }
    return stones;
  }
}
