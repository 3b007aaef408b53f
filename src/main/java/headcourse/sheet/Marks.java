package headcourse.sheet;

import headcourse.bench.Piece;
import java.util.ArrayList;
import java.util.List;

/** Lists stones by their marks, what runs on without a gap by its ends alone. */
public final class Marks {
  private Marks() {}

  /**
   * The marks, as in {@code L1 … L5, K, R2}.
   *
   * @param pieces the stones
   * @param full whether with their openings' marks
   */
  public static String of(List<Piece> pieces, boolean full) {
    List<String> runs = new ArrayList<>();
    for (int i = 0; i < pieces.size(); ) {
      int j = i;
      while (j + 1 < pieces.size() && next(pieces.get(j), pieces.get(j + 1))) {
        j++;
      }
      String from = mark(pieces.get(i), full);
      runs.add(i == j ? from : from + (j == i + 1 ? ", " : " … ") + mark(pieces.get(j), full));
      i = j + 1;
    }
    return String.join(", ", runs);
  }

  private static String mark(Piece p, boolean full) {
    return full ? p.mark() : p.stone().mark();
  }

  private static boolean next(Piece a, Piece b) {
    return opening(a).equals(opening(b))
        && a.stone().side() == b.stone().side()
        && Math.abs(a.stone().index() - b.stone().index()) == 1;
  }

  private static String opening(Piece p) {
    return p.mark().substring(0, p.mark().length() - p.stone().mark().length());
  }
}
