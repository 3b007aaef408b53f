package headcourse.stock.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * Parts to be cut from blanks.
 *
 * @param demand how many of each type
 * @param nesting how they lie together
 * @param bins kinds of blank
 */
public record CuttingProblem(int[] demand, Nesting nesting, List<Bin> bins) {
  /** What a blank counts for beside its material where prices lead. */
  public static final long BLANK = 10_000_000;

  /** In place of the place in the yard's list. */
  private static final int MISSING = -1;

  /** More types than this make a large problem. */
  private static final int LARGE = 40;

  /** Copies the list. */
  public CuttingProblem {
    bins = List.copyOf(bins);
  }

  /**
   * Blanks that are alike.
   *
   * @param index its place in the yard's list
   * @param usable length between the clean cuts, nm
   * @param count how many there are
   * @param cost of one
   * @param takes by type: whether it is high, deep and thick enough
   */
  public record Bin(int index, long usable, int count, Cost cost, boolean[] takes) {
    /** The same kind, but so many of it. */
    Bin withCount(int n) {
      return new Bin(index, usable, n, cost, takes);
    }

    /** In place of a blank for a part that none is left for: it takes one of any type. */
    static Bin missing(int types, int count) {
      boolean[] all = new boolean[types];
      Arrays.fill(all, true);
      return new Bin(MISSING, Long.MAX_VALUE / 4, count, new Cost(1, 0, 0), all);
    }

    /** Whether it takes one part and no more, because it is no blank. */
    boolean single() {
      return index == MISSING;
    }
  }

  /** Parts in all. */
  int parts() {
    int n = 0;
    for (int d : demand) {
      n += d;
    }
    return n;
  }

  /** Whether there are so many types that more patterns are looked for at once. */
  boolean large() {
    return Arrays.stream(demand).filter(d -> d > 0).count() > LARGE;
  }

  /** How many there are of each kind of blank. */
  int[] counts() {
    return bins.stream().mapToInt(Bin::count).toArray();
  }

  /** Whether a single part of a type goes on a kind of blank. */
  boolean holds(Bin bin, int type) {
    long least = Long.MAX_VALUE;
    for (int i = nesting.firstNode[type]; i < nesting.firstNode[type + 1]; i++) {
      least = Math.min(least, nesting.extent[i]);
    }
    return bin.takes[type] && least <= bin.usable;
  }
}
