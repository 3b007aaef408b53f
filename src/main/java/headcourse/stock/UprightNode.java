package headcourse.stock;

import headcourse.stock.pile.Pile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Keys still open for some upright heads, and what no choice with any of them costs less than.
 *
 * @param keys by head: its keys
 * @param floor the bound
 * @param born the older of equals goes first
 */
record UprightNode(List<List<UprightKey>> keys, Pile.Cost floor, int born) {
  /** The most promising first. */
  static final Comparator<UprightNode> BEST =
      Comparator.comparing(UprightNode::floor).thenComparingInt(UprightNode::born);

  /** Copies the list. */
  UprightNode {
    keys = List.copyOf(keys);
  }

  /** Whether each head has one key. */
  boolean settled() {
    return keys.stream().allMatch(k -> k.size() == 1);
  }

  /** How many choices of keys there are. */
  long choices() {
    return keys.stream().mapToLong(List::size).reduce(1, (a, b) -> a * b);
  }

  UprightNode over(Pile.Cost known) {
    return known.compareTo(floor) > 0 ? new UprightNode(keys, known, born) : this;
  }

  /** The least that is sawn off keys. */
  long sawn() {
    return keys.stream()
        .mapToLong(of -> of.stream().mapToLong(UprightKey::sawn).min().orElse(0))
        .sum();
  }

  /** What the keys alone cost at least. */
  static Pile.Cost least(List<List<UprightKey>> keys) {
    Pile.Cost sum = Pile.Cost.NONE;
    for (List<UprightKey> of : keys) {
      long sawn = of.stream().mapToLong(UprightKey::sawn).min().orElse(0);
      long off = of.stream().mapToLong(UprightKey::leastOff).min().orElse(0);
      sum = sum.plus(sawn, 0, off);
    }
    return sum;
  }

  /** The keys of each head by what is sawn off them, in all combinations. */
  static List<UprightNode> bySawn(List<List<UprightKey>> keys) {
    List<List<List<UprightKey>>> out = List.of(List.of());
    for (List<UprightKey> of : keys) {
      TreeMap<Long, List<UprightKey>> groups = new TreeMap<>();
      of.forEach(k -> groups.computeIfAbsent(k.sawn(), x -> new ArrayList<>()).add(k));
      List<List<List<UprightKey>>> next = new ArrayList<>();
      for (List<List<UprightKey>> before : out) {
        for (List<UprightKey> group : groups.values()) {
          List<List<UprightKey>> more = new ArrayList<>(before);
          more.add(List.copyOf(group));
          next.add(more);
        }
      }
      out = next;
    }
    List<UprightNode> nodes = new ArrayList<>();
    out.forEach(k -> nodes.add(new UprightNode(k, least(k), nodes.size())));
    return nodes;
  }

  /** The keys of the head that has most of them in two halves, by width. */
  List<UprightNode> halves(int first) {
    int h = 0;
    for (int i = 1; i < keys.size(); i++) {
      h = keys.get(i).size() > keys.get(h).size() ? i : h;
    }
    List<UprightKey> by = new ArrayList<>(keys.get(h));
    by.sort(Comparator.comparingLong(UprightKey::width));
    List<UprightNode> out = new ArrayList<>();
    for (int half = 0; half < 2; half++) {
      int middle = by.size() / 2;
      List<List<UprightKey>> of = new ArrayList<>(keys);
      of.set(h, List.copyOf(half == 0 ? by.subList(0, middle) : by.subList(middle, by.size())));
      out.add(new UprightNode(of, least(of), first + half).over(floor));
    }
    return out;
  }
}
