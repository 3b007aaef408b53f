package headcourse.stock.pile;

import headcourse.stock.pile.PileDraft.Slot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All pieces of a pile in places: in the rows of the heads, as end stones that are set apart, or
 * left lying. Any two may change places; what each head costs at least then follows.
 */
final class SwapRows {
  /** Orders tried for a head, in steps. */
  private static final long ORDERS = 400;

  private final PileTypes types;
  private final SweepBounds bounds;
  private final int[] type;
  private final int[] group;
  private final int[][] places;

  private SwapRows(PileTypes types, SweepBounds bounds, int[] type, int[] group) {
    this.types = types;
    this.bounds = bounds;
    this.type = type;
    this.group = group;
    this.places = new int[2 * bounds.sides().length][];
    for (int g = 0; g < places.length; g++) {
      int of = g;
      places[g] = IntStream.range(0, type.length).filter(i -> group[i] == of).toArray();
    }
  }

  /**
   * The pieces as they are in a choice; rows that have more stones take what is left lying, the
   * nearest in length to those that they have.
   */
  static SwapRows of(PileTypes types, SweepBounds bounds, PileDraft draft) {
    int[] left = types.count.clone();
    List<int[]> all = new ArrayList<>();
    List<int[]> open = new ArrayList<>();
    for (SweepSide side : bounds.sides()) {
      List<Slot> row = draft.heads().get(side.pair.h()).get(side.s);
      int of = 2 * (2 * side.pair.h() + side.s);
      long sum = 0;
      for (int i = 0; i < side.row.stones; i++) {
        boolean end = side.labelled && i == side.row.stones - 1;
        // The end stone stays the end stone.
        int from = end ? row.size() - 1 : i < row.size() - (side.labelled ? 1 : 0) ? i : -1;
        for (int c = 0; c < side.copies; c++) {
          int[] place = {from < 0 ? -1 : row.get(from).types()[c], of + (end ? 1 : 0), 0};
          if (from < 0) {
            place[2] = (int) (sum / Math.max(1, i));
            open.add(place);
          } else {
            left[place[0]]--;
            sum += c == 0 ? types.usable[place[0]] : 0;
          }
          all.add(place);
        }
      }
    }
    for (int[] place : open) {
      for (int t = 0; t < left.length; t++) {
        boolean good = left[t] > 0 && types.fits.get(t).get(place[1] / 4);
        if (good
            && (place[0] < 0
                || Math.abs(types.usable[t] - place[2])
                    < Math.abs(types.usable[place[0]] - place[2]))) {
          place[0] = t;
        }
      }
      if (place[0] < 0) {
        return null;
      }
      left[place[0]]--;
    }
    for (int t = 0; t < left.length; t++) {
      for (int k = 0; k < left[t]; k++) {
        all.add(new int[] {t, -1});
      }
    }
    return new SwapRows(
        types,
        bounds,
        all.stream().mapToInt(a -> a[0]).toArray(),
        all.stream().mapToInt(a -> a[1]).toArray());
  }

  /** How many places there are. */
  int size() {
    return type.length;
  }

  /** The type of the piece in a place. */
  int type(int place) {
    return type[place];
  }

  /** Which piece lies where. */
  int[] pieces() {
    return type.clone();
  }

  void lay(int[] pieces) {
    System.arraycopy(pieces, 0, type, 0, type.length);
  }

  /** The head that a place is of, or −1. */
  int head(int place) {
    return group[place] < 0 ? -1 : group[place] / 4;
  }

  /** Whether it makes a difference that two pieces change places, and both are good there. */
  boolean may(int i, int j) {
    return type[i] != type[j] && group[i] != group[j] && fits(i, j) && fits(j, i);
  }

  private boolean fits(int place, int other) {
    return head(place) < 0 || types.fits.get(type[other]).get(head(place));
  }

  void swap(int i, int j) {
    int was = type[i];
    type[i] = type[j];
    type[j] = was;
  }

  /** What tells a head's pieces from others. */
  SearchState key(int h) {
    int n = 1;
    for (int g = 4 * h; g < 4 * h + 4; g++) {
      n += places[g].length;
    }
    long[] key = new long[n];
    key[0] = h;
    int at = 1;
    for (int g = 4 * h; g < 4 * h + 4; g++) {
      for (int t : sorted(g)) {
        key[at++] = t;
      }
    }
    return new SearchState(key);
  }

  private int[] sorted(int g) {
    int[] of = new int[places[g].length];
    for (int i = 0; i < of.length; i++) {
      of[i] = type[places[g][i]];
    }
    Arrays.sort(of);
    return of;
  }

  /** The least that a head costs with its pieces; null where they come to no rows. */
  Pile.Cost least(int h) {
    boolean set = set(h);
    Pile.Cost least = set ? new HeadFit(bounds, types, h, ORDERS).least() : null;
    clear(h);
    return least;
  }

  /** By how much a head's pieces fall short of its ends. */
  long wanting(int h) {
    long sum = 0;
    for (int s = 0; s < 2; s++) {
      SweepSide side = bounds.sides()[2 * h + s];
      long covers = 0;
      for (int g = 4 * h + 2 * s; g < 4 * h + 2 * s + 2; g++) {
        for (int p : places[g]) {
          covers += side.covers(types.usable[type[p]]);
        }
      }
      sum += Math.max(0, side.copies * side.leastNeed() - covers);
    }
    return sum;
  }

  /** Looks for rows of a head that cost no more than a cap. */
  HeadFit fit(int h, Pile.Cost cap, long limit) {
    HeadFit fit = new HeadFit(bounds, types, h, ORDERS);
    if (set(h)) {
      fit.run(cap, limit);
    }
    clear(h);
    return fit;
  }

  private boolean set(int h) {
    clear(h);
    for (int s = 0; s < 2; s++) {
      SweepSide side = bounds.sides()[2 * h + s];
      int g = 4 * h + 2 * s;
      if (side.labelled) {
        Batch end = batches(sorted(g + 1), side.copies).get(0);
        if (side.covers(end.usable) < side.pair.head().min()) {
          return false;
        }
        side.setEnd(end);
      }
      for (Batch b : batches(sorted(g), side.copies)) {
        if (!side.takes(b.usable)) {
          return false;
        }
        side.push(b);
      }
    }
    return true;
  }

  private List<Batch> batches(int[] of, int copies) {
    List<Batch> out = new ArrayList<>();
    for (int i = 0; i < of.length; i += copies) {
      Batch b = new Batch(copies, of[i], types.usable[of[i]]);
      for (int k = 1; k < copies; k++) {
        b.add(of[i + k]);
      }
      out.add(b);
    }
    return out;
  }

  private void clear(int h) {
    for (int s = 0; s < 2; s++) {
      SweepSide side = bounds.sides()[2 * h + s];
      while (!side.body.isEmpty()) {
        side.pop();
      }
      if (side.end() != null) {
        side.clearEnd();
      }
    }
  }
}
