package headcourse.stock;

import headcourse.stock.PieceMatch.Demand;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which pieces keys of given widths may take. Of pieces that are good for the same stones the
 * shortest that hold the keys are enough: with any other choice the pieces could change places, and
 * no more would be sawn off. So only from which of these groups each key comes is to be tried.
 */
final class KeyPieces {
  private final List<ChangeProblem.Piece> pieces;
  private final List<boolean[]> groups = new ArrayList<>();
  private final List<Demand> demands = new ArrayList<>();
  private final List<Integer> kinds = new ArrayList<>();
  private final PieceMatch match;
  private final int most;
  private final List<Choice> found = new ArrayList<>();
  private boolean complete = true;

  private KeyPieces(List<ChangeProblem.Piece> pieces, int most) {
    this.pieces = pieces;
    this.match = new PieceMatch(pieces);
    this.most = most;
    Map<String, boolean[]> byUse = new LinkedHashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      ChangeProblem.Piece p = pieces.get(i);
      String use = Arrays.toString(p.fits()) + Arrays.toString(p.fitsKey());
      boolean[] others =
          byUse.computeIfAbsent(
              use,
              u -> {
                boolean[] all = new boolean[pieces.size()];
                Arrays.fill(all, true);
                return all;
              });
      others[i] = false;
    }
    groups.addAll(byUse.values());
  }

  /**
   * One choice.
   *
   * @param keys by head its key's pieces as places in the list of pieces; null where it has none
   * @param sawn what is sawn off these pieces, ticks
   */
  record Choice(List<int[]> keys, long sawn) {}

  /**
   * The choices that are to be tried.
   *
   * @param all those of which least is sawn off first
   * @param complete whether one of them is best in any case
   */
  record Choices(List<Choice> all, boolean complete) {}

  /**
   * The choices for some keys.
   *
   * @param pieces what lies there
   * @param widths by head the width of its key, or −1 where that takes no piece
   * @param copies by head how many openings there are
   * @param most how many choices to look at
   */
  static Choices of(List<ChangeProblem.Piece> pieces, long[] widths, int[] copies, int most) {
    KeyPieces k = new KeyPieces(pieces, most);
    for (int h = 0; h < widths.length; h++) {
      for (int c = 0; widths[h] >= 0 && c < copies[h]; c++) {
        k.demands.add(new Demand(widths[h], h, true));
      }
    }
    k.next(0);
    k.found.sort(Comparator.comparingLong(Choice::sawn));
    return new Choices(k.found, k.complete);
  }

  /** Copies of one key are alike, so their groups only go upwards. */
  private void next(int d) {
    if (found.size() >= most) {
      complete = false;
      return;
    }
    if (d == demands.size()) {
      take();
      return;
    }
    Demand demand = demands.get(d);
    int from = d > 0 && demands.get(d - 1).equals(demand) ? kinds.get(d - 1) : 0;
    for (int g = from; g < groups.size(); g++) {
      if (serves(groups.get(g), demand)) {
        kinds.add(g);
        next(d + 1);
        kinds.remove(d);
      }
    }
  }

  private boolean serves(boolean[] others, Demand demand) {
    for (int p = 0; p < others.length; p++) {
      if (!others[p] && match.serves(p, demand)) {
        return true;
      }
    }
    return false;
  }

  private void take() {
    List<int[]> keys = new ArrayList<>();
    long sawn = 0;
    int[] of = new int[demands.size()];
    for (int g = 0; g < groups.size(); g++) {
      List<Integer> mine = new ArrayList<>();
      for (int d = 0; d < of.length; d++) {
        if (kinds.get(d) == g) {
          mine.add(d);
        }
      }
      int[] taken = match.match(mine.stream().map(demands::get).toList(), groups.get(g).clone());
      if (taken == null) {
        return;
      }
      for (int i = 0; i < taken.length; i++) {
        of[mine.get(i)] = taken[i];
        sawn += pieces.get(taken[i]).usable() - demands.get(mine.get(i)).extent();
      }
    }
    int heads = pieces.isEmpty() ? 0 : pieces.get(0).fits().length;
    for (int h = 0; h < heads; h++) {
      int head = h;
      int[] mine =
          java.util.stream.IntStream.range(0, of.length)
              .filter(d -> demands.get(d).head() == head)
              .map(d -> of[d])
              .toArray();
      keys.add(mine.length == 0 ? null : mine);
    }
    found.add(new Choice(keys, sawn));
  }
}
