package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import java.util.List;
import java.util.stream.Stream;

/** What the heads cost at least that are still to be set, by the number of those that are. */
final class FanAhead {
  private final long[] sawn;
  private final long[] off;
  private final long[] unlike;

  /**
   * @param ways the ways of each head
   * @param copies how many openings each stands over
   */
  FanAhead(List<List<FanWay>> ways, Stream<Integer> copies) {
    List<Integer> each = copies.toList();
    this.sawn = new long[ways.size() + 1];
    this.off = new long[ways.size() + 1];
    this.unlike = new long[ways.size() + 1];
    for (int h = ways.size() - 1; h >= 0; h--) {
      long leastSawn = FanReach.NEVER;
      long leastOff = FanReach.NEVER;
      for (int w = 0; w < ways.get(h).size(); w++) {
        FanWay way = ways.get(h).get(w);
        leastSawn = w == 0 ? way.leastSawn() : Math.min(leastSawn, way.leastSawn());
        long one = each.get(h) * way.leastOff();
        leastOff = w == 0 ? one : Math.min(leastOff, one);
      }
      sawn[h] = sawn[h + 1] + leastSawn;
      off[h] = off[h + 1] + leastOff;
    }
  }

  /** Takes into account what each head costs at least with the pile to itself. */
  void over(List<Pile.Cost> alone) {
    for (int h = alone.size() - 1; h >= 0; h--) {
      Pile.Cost one = alone.get(h);
      long sum = sawn[h + 1] + one.sawn();
      sawn[h] = Math.max(sawn[h], sum);
      // Sides differ by so much where no more is sawn off than must be.
      unlike[h] = sawn[h] == sum ? unlike[h + 1] + one.imbalance() : 0;
    }
  }

  long sawn(int h) {
    return sawn[h];
  }

  /** By how much the bearings are off, pm. */
  long off(int h) {
    return off[h];
  }

  /** By how much the sides differ where no more is sawn off than must be. */
  long unlike(int h) {
    return unlike[h];
  }
}
