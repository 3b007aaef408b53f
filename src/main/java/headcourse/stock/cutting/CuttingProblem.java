package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

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

    /** Whether it takes one part and no more, because it is no blank. */
    boolean single() {
      return index == MISSING;
    }
  }

  /** Parts in all. */
  int parts() {
    return Arrays.stream(demand).sum();
  }

  /**
   * With a last kind of bin in place of blanks for parts that none is left for: each takes one of
   * any type.
   */
  CuttingProblem withPlaces(int count) {
    boolean[] all = new boolean[demand.length];
    Arrays.fill(all, true);
    List<Bin> more = new ArrayList<>(bins);
    more.removeIf(Bin::single);
    more.add(new Bin(MISSING, Long.MAX_VALUE / 4, count, new Cost(1, 0, 0), all));
    return new CuttingProblem(demand, nesting, more);
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
    return bin.takes[type]
        && IntStream.range(nesting.firstNode[type], nesting.firstNode[type + 1])
            .anyMatch(i -> nesting.extent[i] <= bin.usable);
  }
}
