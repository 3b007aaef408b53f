package headcourse.stock;

import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What of the numbered blanks is used up: where stones were cut out of them, or broke.
 *
 * @param spans by id of the blank, from its left end
 */
record Used(Map<String, List<Span>> spans) {
  /** Nothing is. */
  static final Used NOTHING = new Used(Map.of());

  /** Copies the map, in its order. */
  Used {
    Map<String, List<Span>> copy = new LinkedHashMap<>();
    spans.forEach((id, of) -> copy.put(id, List.copyOf(of)));
    spans = Collections.unmodifiableMap(copy);
  }

  /**
   * A length of a blank that is there no more.
   *
   * @param at where it begins
   * @param extent how long it is
   */
  record Span(Length at, Length extent) {
    Length end() {
      return at.plus(extent);
    }
  }

  /** The spans of a blank; none where it is whole. */
  List<Span> of(String id) {
    return spans.getOrDefault(id, List.of());
  }

  /** Whether anything was cut from a blank. */
  boolean opened(String id) {
    return spans.containsKey(id);
  }

  /** With a span more. */
  Used and(String id, Length at, Length extent) {
    Map<String, List<Span>> more = new LinkedHashMap<>(spans);
    List<Span> of = new ArrayList<>(of(id));
    of.add(new Span(at, extent));
    more.put(id, of);
    return new Used(more);
  }
}
