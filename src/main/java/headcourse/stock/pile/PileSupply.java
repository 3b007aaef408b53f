package headcourse.stock.pile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Whether there are pieces enough, and long enough in all, whatever stone each is taken for. */
public final class PileSupply {
  private static final long NEVER = Long.MAX_VALUE / 4;

  private final List<long[]> needs = new ArrayList<>();
  private final List<Integer> copies = new ArrayList<>();
  private final List<Long> lengths;

  private PileSupply(List<Long> lengths) {
    this.lengths = lengths.stream().sorted(Comparator.reverseOrder()).toList();
  }

  /** For heads under one rule each. */
  public static boolean suffices(Pile pile, PileTypes types) {
    long most = 0;
    long min = Long.MAX_VALUE;
    for (int h = 0; h < pile.heads().size(); h++) {
      most = Math.max(most, pile.heads().get(h).max() + types.extra(h));
      min = Math.min(min, pile.heads().get(h).min());
    }
    long cap = most;
    PileSupply supply = new PileSupply(lengths(pile.pieces(), min, cap));
    for (Pile.Head head : pile.heads()) {
      for (int s = 0; s < 2; s++) {
        long[] need = supply.none();
        least(need, head.side(s), head.min(), head.max(), head.eachSide(), true);
        supply.side(need, head.copies());
      }
    }
    return supply.holds();
  }

  /**
   * What a head needs of a pile.
   *
   * @param copies how many identical openings
   * @param min least width
   * @param max greatest width
   * @param each stones on each side, or 0 where that is open
   * @param left how its left side may be: one for each striking point
   * @param right the same for its right side
   */
  public record Need(
      int copies, long min, long max, int each, List<PileSide> left, List<PileSide> right) {}

  /** For heads that may have several striking points. */
  public static boolean suffices(List<Pile.Piece> pieces, List<Need> heads) {
    long min = heads.stream().mapToLong(Need::min).min().orElse(0);
    PileSupply supply = new PileSupply(lengths(pieces, min, NEVER));
    for (Need head : heads) {
      for (List<PileSide> sides : List.of(head.left(), head.right())) {
        long[] need = supply.none();
        for (PileSide side : sides) {
          least(need, side, head.min(), head.max(), head.each(), false);
        }
        supply.side(need, head.copies());
      }
    }
    return supply.holds();
  }

  private static List<Long> lengths(List<Pile.Piece> pieces, long min, long most) {
    return pieces.stream()
        .filter(p -> p.usable() >= min && p.fits().contains(true))
        .map(p -> Math.min(p.usable(), most))
        .toList();
  }

  private long[] none() {
    long[] need = new long[lengths.size() + 1];
    Arrays.fill(need, NEVER);
    return need;
  }

  private void side(long[] need, int each) {
    needs.add(need);
    copies.add(each);
  }

  /** By number of stones: the least that they come to along their blanks. */
  private static void least(
      long[] need, PileSide side, long min, long max, int eachSide, boolean leaning) {
    long extras = 0;
    for (int n = 1; n < need.length; n++) {
      extras += leaning ? side.extra(n) : 0;
      long more = side.start() + n * side.joint();
      if (eachSide > 0 && n != eachSide || more + n * min > side.lastEnd()) {
        continue;
      }
      for (long e = Math.max(side.firstEnd(), more + n * min); e <= side.lastEnd(); e++) {
        if (e - more > n * max) {
          break;
        }
        if (side.bearingOff(e) >= 0) {
          long lean = leaning ? extras : leans(side, n, min, max, e);
          need[n] = Math.min(need[n], e - more + lean);
          break;
        }
      }
    }
  }

  /**
   * How much longer than wide so many stones of a fan are in all at least: each stands no nearer
   * the centre than if all after it were as wide as may be, and the nearer the less it leans.
   */
  private static long leans(PileSide side, int n, long min, long max, long end) {
    long sum = 0;
    long outer = end;
    for (int j = 0; j < n; j++) {
      long inner = outer - side.joint() - max;
      if (inner < side.start()) {
        break;
      }
      long wide = side.extent(side.regularFrom(), inner, outer, false) - max;
      long from = outer - side.joint() - min;
      long narrow = side.extent(side.regularFrom(), from, outer, false) - min;
      // Extents are whole ticks, rounded up.
      sum += Math.max(0, Math.min(wide, narrow) - 2);
      outer = inner;
    }
    return sum;
  }

  private boolean holds() {
    long[] least = none();
    least[0] = 0;
    for (int s = 0; s < needs.size(); s++) {
      long[] next = none();
      for (int k = 0; k < least.length; k++) {
        for (int n = 1; least[k] < NEVER && k + n * copies.get(s) < least.length; n++) {
          long one = needs.get(s)[n];
          int to = k + n * copies.get(s);
          next[to] = one < NEVER ? Math.min(next[to], least[k] + copies.get(s) * one) : next[to];
        }
      }
      least = next;
    }
    long sum = 0;
    for (int k = 1; k < least.length; k++) {
      sum += lengths.get(k - 1);
      if (least[k] <= sum) {
        return true;
      }
    }
    return false;
  }
}
