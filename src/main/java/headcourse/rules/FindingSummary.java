package headcourse.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts findings together that say the same of several stones. */
final class FindingSummary {
  private FindingSummary() {}

  /** One finding for all stones of an opening of which a rule says the same; order as before. */
  static List<Finding> of(List<Finding> findings) {
    Map<Finding, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding f : findings) {
      groups.computeIfAbsent(bare(f), k -> new ArrayList<>()).add(f);
    }
    return groups.entrySet().stream().map(e -> joined(e.getKey(), e.getValue())).toList();
  }

  /** The finding without its stone. */
  private static Finding bare(Finding f) {
    if (f.stone() == null) {
      return f;
    }
    return with(f, null, f.message().substring(f.stone().length()));
  }

  private static Finding joined(Finding bare, List<Finding> group) {
    if (group.size() == 1 || bare.stone() == null && group.get(0).stone() == null) {
      return group.get(0);
    }
    StringBuilder stones = new StringBuilder();
    for (Finding f : group) {
      String mark = f.stone();
      boolean first = stones.length() == 0;
      String brief =
          !first && mark.startsWith(f.opening() + "-")
              ? mark.substring(f.opening().length() + 1)
              : mark;
      stones.append(first ? "" : ", ").append(brief);
    }
    return with(bare, null, stones + bare.message());
  }

  private static Finding with(Finding f, String stone, String message) {
    return new Finding(
        f.rule(), f.severity(), f.opening(), stone, message, f.source(), f.status(), f.accepted());
  }
}
