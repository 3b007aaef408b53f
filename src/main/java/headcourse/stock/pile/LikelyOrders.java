package headcourse.stock.pile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Orders of a side's stones that are worth a try before all others. */
final class LikelyOrders {
  private LikelyOrders() {}

  /** How many there are. */
  static int count(SweepSide side) {
    int k = Math.max(1, side.body.size());
    return side.row.side.extra(1) == 0 ? k + 1 : 2 * k + 1;
  }

  /**
   * The stones from the centre outwards: wider and wider, or narrower and narrower; then with the
   * second widest last, the third and so on, wider ones going up and down before it; then with one
   * moved to the key.
   */
  static List<Batch> of(SweepSide side, int way) {
    int k = side.body.size();
    List<Batch> out = new ArrayList<>(side.body);
    if (way == 1) {
      Collections.reverse(out);
    } else if (way > 1 && way <= k) {
      int last = k - way;
      int at = last;
      for (int i = last + 1; i < k; i += 2) {
        out.set(at++, side.body.get(i));
      }
      for (int i = last + (k - 1 - last) / 2 * 2; i >= last; i -= 2) {
        out.set(at++, side.body.get(i));
      }
    } else if (way > k && k > 0) {
      out.add(0, out.remove(Math.max(0, Math.min(k - 1, 2 * k - way))));
    }
    if (side.end() != null) {
      out.add(side.end());
    }
    return out;
  }
}
