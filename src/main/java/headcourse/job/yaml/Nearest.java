package headcourse.job.yaml;

import java.util.Collection;
import java.util.Optional;

/** Finds the right word behind a misspelt one. */
public final class Nearest {
  private Nearest() {}

  /** The nearest word, where one is near enough to be meant. */
  public static Optional<String> to(String word, Collection<String> words) {
    String best = null;
    // Of a short word there is little left when three letters are others: lintel is no label.
    int least = (word.length() < 4 ? 1 : word.length() < 8 ? 2 : 3) + 1;
    if (word.length() > 40) {
      return Optional.empty();
    }
    for (String w : words) {
      int d = distance(word.toLowerCase(java.util.Locale.ROOT).replace('_', '-'), w);
      if (d < least) {
        least = d;
        best = w;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Letters to change, add, drop, or swap with their neighbour (optimal string alignment). */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
