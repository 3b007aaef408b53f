package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Piles cut from heads that are known, so that there is a choice: one head or two, upright or
 * fanned, neighbours that may differ little or much, a bearing with little play or much, and pieces
 * of no known use among them.
 */
final class PlantedPile {
  private final Random r;
  private final List<Long> lengths = new ArrayList<>();

  private PlantedPile(long seed) {
    r = new Random(seed * 31 + 5);
  }

  static Pile of(long seed) {
    return new PlantedPile(seed).make();
  }

  private Pile make() {
    int heads = 1 + r.nextInt(3) / 2;
    List<Pile.Head> of = new ArrayList<>();
    for (int h = 0; h < heads; h++) {
      of.add(head(3 + r.nextInt(heads == 1 ? 8 : 5)));
    }
    int decoys = r.nextInt(12);
    long least = Collections.min(lengths);
    long most = Collections.max(lengths);
    for (int i = 0; i < decoys; i++) {
      lengths.add(least / 2 + r.nextInt((int) (most - least / 2)));
    }
    Collections.shuffle(lengths, r);
    List<Pile.Piece> pieces = new ArrayList<>();
    List<Boolean> fits = Collections.nCopies(heads, true);
    lengths.forEach(l -> pieces.add(RandomPile.piece(l, fits)));
    return new Pile(pieces, of, 8, false);
  }

  private Pile.Head head(int aSide) {
    long min = 64 + r.nextInt(16);
    long max = min + 16 + r.nextInt(64);
    long jump = r.nextInt(3) == 0 ? 4 + r.nextInt(12) : Long.MAX_VALUE;
    int joint = r.nextInt(3) == 0 ? 4 : 0;
    long start = 40 + r.nextInt(40);
    double growth = r.nextInt(3) == 0 ? 1.05 + r.nextDouble() / 5 : 1;
    List<List<Long>> rows = List.of(widths(aSide, min, max, jump), widths(aSide, min, max, jump));
    long[] end = new long[2];
    long inner = Long.MAX_VALUE;
    for (int s = 0; s < 2; s++) {
      end[s] = start;
      for (int i = 0; i < aSide; i++) {
        inner = i == aSide - 1 ? Math.min(inner, end[s]) : inner;
        end[s] += joint + rows.get(s).get(i);
      }
    }
    int play = r.nextInt(3) == 0 ? 1 : 16;
    long first = Math.min(end[0], end[1]) - r.nextInt(play);
    long last = Math.max(end[0], end[1]) + r.nextInt(play);
    // The jamb line falls into the end stones.
    long jamb = Math.max(inner, Math.max(end[0] - joint, end[1] - joint) - min / 2);
    jamb = Math.min(jamb, first - 1);
    PlainFan side = new PlainFan(start, joint, growth, false, jamb, 0, first, last, end[0]);
    for (int s = 0; s < 2; s++) {
      long foot = start;
      for (int i = 0; i < aSide; i++) {
        long outer = foot + joint + rows.get(s).get(i);
        lengths.add(side.extent(i + 1, foot, outer, i == aSide - 1));
        foot = outer;
      }
    }
    return RandomPile.head(1, r.nextBoolean(), 0, new long[] {min, max}, jump, side, side);
  }

  private List<Long> widths(int n, long min, long max, long jump) {
    List<Long> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      long low = i == 0 ? min : Math.max(min, out.get(i - 1) - jump);
      long high = i == 0 || jump > max ? max : Math.min(max, out.get(i - 1) + jump);
      out.add(low + r.nextInt((int) (high - low + 1)));
    }
    return out;
  }
}
