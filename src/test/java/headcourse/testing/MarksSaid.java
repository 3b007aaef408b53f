package headcourse.testing;

import java.util.Set;
import java.util.TreeSet;

/** Marks as sheets name many of them short. */
public final class MarksSaid {
  private MarksSaid() {}

  /** Every mark of a text as {@code A1-L1–L3, R1; A2-K} or {@code A1-L1, L3 … L9}. */
  public static Set<String> all(String text) {
    Set<String> marks = new TreeSet<>();
    for (String opening : text.split("; ")) {
      String prefix = opening.substring(0, opening.lastIndexOf('-') + 1);
      int last = 0;
      for (String run : opening.substring(prefix.length()).split(", ")) {
        String[] ends = run.split("–| … ");
        int from = number(ends[0]);
        int to = number(ends[ends.length - 1]);
        // By twos it begins with the one before.
        int step = run.contains("…") ? from - last : 1;
        for (int i = from; i <= to; i += Math.max(1, step)) {
          marks.add(prefix + ends[0].charAt(0) + (i == 0 ? "" : i));
        }
        last = from;
      }
    }
    return marks;
  }

  private static int number(String mark) {
    return mark.length() == 1 ? 0 : Integer.parseInt(mark.substring(1));
  }
}
