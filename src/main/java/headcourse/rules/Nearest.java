package headcourse.rules;

import java.util.Comparator;
import java.util.List;

/** Finds the right word for a misspelt one. */
final class Nearest {
  private Nearest() {}

  /** A hint with up to two near words, or with where to find them all. */
  static List<String> hints(String word, List<String> words) {
    List<String> near =
        words.stream()
            .filter(w -> w.contains(word) || distance(word, w) <= Math.max(2, word.length() / 3))
            .sorted(Comparator.comparingInt((String w) -> distance(word, w)))
            .limit(2)
            .toList();
    return List.of(
        near.isEmpty()
            ? "known are: " + String.join(", ", words)
            : "did you mean " + String.join(" or ", near) + "?");
  }

  /** Levenshtein's edit distance. */
  static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
