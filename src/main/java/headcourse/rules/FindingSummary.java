package headcourse.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts findings together that say the same of several stones. */
final class FindingSummary {
  private FindingSummary() {}

  /**
   * One finding for all stones of an opening of which a rule says the same; order as before.
   *
   * @param findings of a job
   * @param to the word between the ends of a run of stones
   */
  static List<Finding> of(List<Finding> findings, String to) {
    Map<List<Object>, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding f : findings) {
      groups.computeIfAbsent(said(bare(f)), k -> new ArrayList<>()).add(f);
    }
    List<Finding> all = new ArrayList<>();
    for (List<Finding> group : groups.values()) {
      all.add(joined(bare(group.get(0)), group, to));
    }
    return List.copyOf(all);
  }

  /** All that a finding says; a list, as a record's own hash takes long to get going. */
  private static List<Object> said(Finding f) {
    return Arrays.asList(
        f.rule(),
        f.severity(),
        f.opening(),
        f.stone(),
        f.message(),
        f.source(),
        f.status(),
        f.accepted());
  }

  /** The finding without its stone. */
  private static Finding bare(Finding f) {
    if (f.stone() == null) {
      return f;
    }
    return with(f, null, f.message().substring(f.stone().length()));
  }

  private static Finding joined(Finding bare, List<Finding> group, String to) {
    if (group.size() == 1 || bare.stone() == null && group.get(0).stone() == null) {
      return group.get(0);
    }
    String opening = bare.opening() + "-";
    List<String> marks =
        group.stream().map(f -> f.stone().substring(opening.length())).distinct().toList();
    return with(bare, null, opening + String.join(", ", runs(marks, to)) + bare.message());
  }

  /** Three and more marks in a row of one side become {@code L1 to L6}. */
  static List<String> runs(List<String> marks, String to) {
    List<String> said = new ArrayList<>();
    int i = 0;
    while (i < marks.size()) {
      int end = i;
      int step = i + 1 < marks.size() ? step(marks.get(i), marks.get(i + 1)) : 0;
      while (step != 0
          && end + 1 < marks.size()
          && step(marks.get(end), marks.get(end + 1)) == step) {
        end++;
      }
      if (end - i >= 2) {
        String low = marks.get(step > 0 ? i : end);
        String high = marks.get(step > 0 ? end : i);
        said.add(low + " " + to + " " + high);
        i = end + 1;
      } else {
        said.add(marks.get(i));
        i++;
      }
    }
    return said;
  }

  /** 1 or −1 where the marks follow each other on one side, else 0. */
  private static int step(String a, String b) {
    if (!counted(a) || !counted(b) || a.charAt(0) != b.charAt(0)) {
      return 0;
    }
    int d = Integer.parseInt(b.substring(1)) - Integer.parseInt(a.substring(1));
    return Math.abs(d) == 1 ? d : 0;
  }

  /** Whether a mark is a side and a number of up to six digits. */
  private static boolean counted(String mark) {
    if (mark.length() < 2 || mark.length() > 7 || "LR".indexOf(mark.charAt(0)) < 0) {
      return false;
    }
    for (int i = 1; i < mark.length(); i++) {
      if (mark.charAt(i) < '0' || mark.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  private static Finding with(Finding f, String stone, String message) {
    return new Finding(
        f.rule(), f.severity(), f.opening(), stone, message, f.source(), f.status(), f.accepted());
  }
}
