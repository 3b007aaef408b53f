package headcourse.bench;

import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The order in which stones go up: the key, then outward with the sides in turn, right first, the
 * end stones last. Curved heads go the same way: the screws hold each stone, so no centring has to
 * carry a ring that closes at the key.
 *
 * @param numbers from 1, by mark
 */
record SettingOrder(Map<String, Integer> numbers) {
  static SettingOrder of(HeadLayout head) {
    List<PlacedStone> order = new ArrayList<>(head.stones());
    order.sort(
        Comparator.comparing((PlacedStone s) -> s.role() == Role.END)
            .thenComparingInt(PlacedStone::index)
            .thenComparing(s -> s.side() == Side.LEFT));
    Map<String, Integer> numbers = new TreeMap<>();
    for (PlacedStone s : order) {
      numbers.put(s.mark(), numbers.size() + 1);
    }
    return new SettingOrder(numbers);
  }

  /** The number of a stone. */
  int of(PlacedStone stone) {
    return numbers.get(stone.mark());
  }

  /** Whether one stone goes up before another. */
  boolean before(PlacedStone a, PlacedStone b) {
    return of(a) < of(b);
  }
}
