package headcourse.sheet;

import headcourse.bench.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Writes many marks or numbers short: {@code L2–L7, R2–R7}; nothing is left out. */
public final class MarkRuns {
  private MarkRuns() {}

  /** The marks of stones, the opening named where there are several. */
  public static String of(List<Piece> pieces) {
    return of(pieces, false);
  }

  /** The full marks of stones, the opening always named. */
  public static String full(List<Piece> pieces) {
    return of(pieces, true);
  }

  private static String of(List<Piece> pieces, boolean full) {
    Map<String, Map<String, TreeSet<Integer>>> by = new LinkedHashMap<>();
    for (Piece p : pieces) {
      String own = p.stone().mark();
      String opening = p.mark().substring(0, p.mark().length() - own.length());
      by.computeIfAbsent(opening, k -> new LinkedHashMap<>())
          .computeIfAbsent(letters(own, own.length()), k -> new TreeSet<>())
          .add(p.stone().index());
    }
    List<String> texts = new ArrayList<>();
    for (var opening : by.entrySet()) {
      List<String> runs = new ArrayList<>();
      for (var side : opening.getValue().entrySet()) {
        if (side.getValue().first() == 0) {
          runs.add(side.getKey());
        } else {
          runs.addAll(runs(side.getKey(), side.getValue()));
        }
      }
      texts.add((full || by.size() > 1 ? opening.getKey() : "") + String.join(", ", runs));
    }
    return String.join("; ", texts);
  }

  /** A mark without the digits at its end, or without so many of them. */
  private static String letters(String mark, int most) {
    int end = mark.length();
    while (end > 0
        && mark.length() - end < most
        && mark.charAt(end - 1) >= '0'
        && mark.charAt(end - 1) <= '9') {
      end--;
    }
    return mark.substring(0, end);
  }

  /** Numbers, ascending. */
  public static String of(Iterable<Integer> numbers) {
    TreeSet<Integer> sorted = new TreeSet<>();
    for (int n : numbers) {
      sorted.add(n);
    }
    return String.join(", ", runs("", sorted));
  }

  /** Names that end in a number, as blanks have. */
  public static String ofIds(List<String> ids) {
    Map<String, TreeSet<Integer>> by = new TreeMap<>();
    List<String> plain = new ArrayList<>();
    for (String id : ids) {
      String kind = letters(id, 6);
      if (kind.length() == id.length()) {
        plain.add(id);
      } else {
        by.computeIfAbsent(kind, k -> new TreeSet<>())
            .add(Integer.parseInt(id.substring(kind.length())));
      }
    }
    for (var kind : by.entrySet()) {
      plain.addAll(runs(kind.getKey(), kind.getValue()));
    }
    return String.join(", ", plain);
  }

  private static List<String> runs(String letter, TreeSet<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    List<Integer> all = List.copyOf(numbers);
    int i = 0;
    while (i < all.size()) {
      // A run by ones or by twos, as sides set in turn have; a run of three is worth a dash.
      int step = i + 1 < all.size() ? all.get(i + 1) - all.get(i) : 0;
      int j = i;
      while (j + 1 < all.size() && step <= 2 && all.get(j + 1) == all.get(j) + step) {
        j++;
      }
      if (j - i < step + 1) {
        j = i;
        runs.add(letter + all.get(i));
      } else if (step == 1) {
        runs.add(letter + all.get(i) + "–" + letter + all.get(j));
      } else {
        runs.add(
            letter + all.get(i) + ", " + letter + all.get(i + 1) + " … " + letter + all.get(j));
      }
      i = j + 1;
    }
    return runs;
  }
}
