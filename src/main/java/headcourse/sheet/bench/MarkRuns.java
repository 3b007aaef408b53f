package headcourse.sheet.bench;

import headcourse.bench.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Writes many marks or numbers short: {@code L2–L7, R2–R7}; nothing is left out. */
final class MarkRuns {
  private MarkRuns() {}

  /** The marks of stones, the opening named where there are several. */
  static String of(List<Piece> pieces) {
    Map<String, Map<String, TreeSet<Integer>>> by = new LinkedHashMap<>();
    for (Piece p : pieces) {
      String own = p.stone().mark();
      String opening = p.mark().substring(0, p.mark().length() - own.length());
      by.computeIfAbsent(opening, k -> new LinkedHashMap<>())
          .computeIfAbsent(own.replaceAll("[0-9]+$", ""), k -> new TreeSet<>())
          .add(p.stone().index());
    }
    List<String> texts = new ArrayList<>();
    by.forEach(
        (opening, sides) -> {
          List<String> runs = new ArrayList<>();
          sides.forEach(
              (letter, numbers) -> {
                if (numbers.first() == 0) {
                  runs.add(letter);
                } else {
                  runs.addAll(runs(letter, numbers));
                }
              });
          texts.add((by.size() > 1 ? opening : "") + String.join(", ", runs));
        });
    return String.join("; ", texts);
  }

  /** Numbers, ascending. */
  static String of(Iterable<Integer> numbers) {
    TreeSet<Integer> sorted = new TreeSet<>();
    numbers.forEach(sorted::add);
    return String.join(", ", runs("", sorted));
  }

  private static List<String> runs(String letter, TreeSet<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    List<Integer> all = List.copyOf(numbers);
    int i = 0;
    while (i < all.size()) {
      int j = i;
      while (j + 1 < all.size() && all.get(j + 1) == all.get(j) + 1) {
        j++;
      }
      if (j - i < 2) {
        j = i;
        runs.add(letter + all.get(i));
      } else {
        runs.add(letter + all.get(i) + "–" + letter + all.get(j));
      }
      i = j + 1;
    }
    return runs;
  }
}
