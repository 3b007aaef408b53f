package headcourse.revision;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What changed between two revisions.
 *
 * @param since mark of the revision before; may be empty
 * @param compared whether there was one to compare with
 * @param items numbered from 1, in the order of the openings and of their stones from left to right
 */
public record Changes(String since, boolean compared, List<Item> items) {
  /** No revision before. */
  public static final Changes NONE = new Changes("", false, List.of());

  /** Copies the items. */
  public Changes {
    items = List.copyOf(items);
  }

  /** What happened to an opening or a stone. */
  public enum Kind {
    /** It is new. */
    ADDED,
    /** It is gone. */
    REMOVED,
    /** It is another in some property. */
    CHANGED
  }

  /**
   * An opening or a stone that is not what it was.
   *
   * @param number the number in its triangle
   * @param opening mark of the opening
   * @param stone full mark of the stone, or empty for the opening itself
   * @param kind what happened
   * @param differences what differs; none unless changed
   */
  public record Item(
      int number, String opening, String stone, Kind kind, List<Difference> differences) {
    /** Copies the differences. */
    public Item {
      differences = List.copyOf(differences);
    }
  }

  /** A property before and after; both in the property's unit. */
  public record Difference(Property property, Value before, Value after) {}

  /** The number in the triangle of a stone that is on the drawing. */
  public Optional<Integer> number(String stone) {
    return items.stream().filter(i -> i.stone().equals(stone)).map(Item::number).findFirst();
  }

  /** Compares two editions. */
  public static Changes between(Edition before, Edition after) {
    List<Item> items = new ArrayList<>();
    Map<String, Edition.Opening> old = new LinkedHashMap<>();
    before.openings().forEach(o -> old.put(o.mark(), o));
    for (Edition.Opening now : after.openings()) {
      Edition.Opening then = old.remove(now.mark());
      if (then == null) {
        add(items, now.mark(), "", Kind.ADDED, List.of());
      } else {
        changed(items, now.mark(), "", then.values(), now.values());
        stones(items, then, now);
      }
    }
    old.keySet().forEach(mark -> add(items, mark, "", Kind.REMOVED, List.of()));
    return new Changes(before.revision(), true, items);
  }

  private static void stones(List<Item> items, Edition.Opening then, Edition.Opening now) {
    Map<String, Edition.Stone> old = new LinkedHashMap<>();
    then.stones().forEach(s -> old.put(s.mark(), s));
    for (Edition.Stone s : now.stones()) {
      Edition.Stone was = old.remove(s.mark());
      if (was == null) {
        add(items, now.mark(), s.mark(), Kind.ADDED, List.of());
      } else {
        changed(items, now.mark(), s.mark(), was.values(), s.values());
      }
    }
    old.keySet().forEach(mark -> add(items, now.mark(), mark, Kind.REMOVED, List.of()));
  }

  private static void changed(
      List<Item> items,
      String opening,
      String stone,
      Map<Property, Value> then,
      Map<Property, Value> now) {
    Map<Property, Value> all = new EnumMap<>(Property.class);
    all.putAll(then);
    all.putAll(now);
    List<Difference> differences = new ArrayList<>();
    for (Property p : all.keySet()) {
      Value a = then.getOrDefault(p, Value.NONE);
      Value b = now.getOrDefault(p, Value.NONE);
      if (!a.same(b, p.kind())) {
        differences.add(new Difference(p, a, b));
      }
    }
    if (!differences.isEmpty()) {
      add(items, opening, stone, Kind.CHANGED, differences);
    }
  }

  private static void add(
      List<Item> items, String opening, String stone, Kind kind, List<Difference> differences) {
    items.add(new Item(items.size() + 1, opening, stone, kind, differences));
  }
}
