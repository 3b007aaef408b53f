package headcourse.sheet.frame;

import java.util.List;

/** The names of the fields that a frame may hold, as in {@code id="field-title"}. */
final class FieldNames {
  private FieldNames() {}

  static final List<String> ALL =
      List.of(
          "owner",
          "number",
          "title",
          "site",
          "client",
          "drawn-by",
          "approved",
          "date",
          "revision",
          "sheet",
          "piece",
          "bundle",
          "language",
          "scale",
          "caution",
          "view",
          "notes",
          "paper",
          "stone",
          "units");

  /** The known name nearest to a word, for a hint. */
  static String nearest(String word) {
    String best = ALL.get(0);
    int least = Integer.MAX_VALUE;
    for (String name : ALL) {
      int d = distance(word, name);
      if (d < least) {
        least = d;
        best = name;
      }
    }
    return best;
  }

  /** Letters to add, drop or change (Levenshtein). */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int corner = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = corner + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        corner = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
