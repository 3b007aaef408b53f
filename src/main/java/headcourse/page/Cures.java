package headcourse.page;

import headcourse.job.Change;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The cures that were offered, by number: the page names one and can write nothing else beside its
 * fields.
 */
final class Cures {
  private static final int KEPT = 500;

  private final Map<String, List<Change>> offered =
      new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, List<Change>> eldest) {
          return size() > KEPT;
        }
      };
  private int last;

  /** Notes an offer and gives its number; the same offer has the same. */
  synchronized String offer(List<Change> cure) {
    for (Map.Entry<String, List<Change>> e : offered.entrySet()) {
      if (e.getValue().equals(cure)) {
        return e.getKey();
      }
    }
    String number = Integer.toString(++last);
    offered.put(number, List.copyOf(cure));
    return number;
  }

  /** What was offered under a number; nothing where it is none. */
  synchronized List<Change> of(String number) {
    return offered.getOrDefault(number, List.of());
  }

  /** A change as a button says it. */
  static String words(Change c) {
    String path = c.path().replaceFirst("^openings\\[[0-9]+\\]\\.(head\\.)?", "");
    String name = path.replace(".", " ");
    return c.leavesOut() ? "− " + name : name + ": " + c.value();
  }
}
