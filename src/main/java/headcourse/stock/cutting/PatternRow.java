package headcourse.stock.cutting;

import java.util.Arrays;

/**
 * A row of the master problem beside those that ask for the parts: how many patterns of a certain
 * kind a plan has is at most, or at least, so many. Branching makes such rows.
 */
final class PatternRow {
  private static final int ANY = -1;

  private final int bin;
  private final int[] types;
  private final int[] least;
  private final boolean atLeast;
  private final int bound;
  private final boolean together;
  private final int size;

  private PatternRow(
      int bin,
      int[] types,
      int[] least,
      boolean atLeast,
      int bound,
      boolean together) {
    this.bin = bin;
    this.types = types;
    this.least = least;
    this.atLeast = atLeast;
    this.bound = bound;
    this.together = together;
    this.size = Arrays.stream(least).sum();
  }

  /**
   * Blanks that hold no fewer of each type than given.
   *
   * @param bin the kind of blank, or −1 for any
   * @param load how many of each type
   * @param demand how many of each type there are
   * @param atLeast whether there must be so many of them, rather than no more
   */
  static PatternRow holding(int bin, int[] load, int[] demand, boolean atLeast, int bound) {
    int[] types =
        java.util.stream.IntStream.range(0, load.length).filter(t -> load[t] > 0).toArray();
    int[] least = Arrays.stream(types).map(t -> load[t]).toArray();
    boolean single = Arrays.stream(types).allMatch(t -> demand[t] == 1);
    boolean together = atLeast && bound == 1 && single && types.length > 1;
    return new PatternRow(bin, types, least, atLeast, bound, together);
  }

  boolean atLeast() {
    return atLeast;
  }

  int bound() {
    return bound;
  }

  /** Whether it is of that kind of blank, whatever lies on it. */
  boolean counts(int kind) {
    return bin == kind && types.length == 0;
  }

  boolean has(int type) {
    for (int t : types) {
      if (t == type) {
        return true;
      }
    }
    return false;
  }

  /** How many parts a blank must hold to be counted. */
  int size() {
    return size;
  }

  /** How many of them lie there. */
  int present(int[] counts) {
    int sum = 0;
    for (int k = 0; k < types.length; k++) {
      sum += Math.min(counts[types[k]], least[k]);
    }
    return sum;
  }

  /** Whether there are blanks that it forbids. */
  boolean mayForbid() {
    return !atLeast && bound == 0;
  }

  /** Whether it asks for single parts to lie together. */
  boolean joins() {
    return together;
  }

  /** Whether parts that lie together may still do so if types from a place on are added. */
  boolean joined(int[] counts, int[] place, int from) {
    for (int t : types) {
      if (counts[t] == 0 && place[t] < from) {
        return false;
      }
    }
    return true;
  }

  /** How often it counts a blank; never less when more lies on the blank. */
  int of(int kind, int[] counts) {
    if (bin != ANY && bin != kind) {
      return 0;
    }
    for (int k = 0; k < types.length; k++) {
      if (counts[types[k]] < least[k]) {
        return 0;
      }
    }
    return 1;
  }

  /** Whether it may still count a blank once, if of the types at places from there on are added. */
  boolean within(int kind, int[] counts, int[] place, int from) {
    if (bin != ANY && bin != kind) {
      return false;
    }
    for (int k = 0; k < types.length; k++) {
      if (counts[types[k]] < least[k] && place[types[k]] < from) {
        return false;
      }
    }
    return true;
  }

  /** Whether no blank filled like this, nor one with more on it, is of use. */
  boolean forbids(int kind, int[] counts) {
    return mayForbid() && of(kind, counts) > 0;
  }

  /** Whether a blank filled like this is of no use, though one with more on it may be. */
  boolean splits(int[] counts) {
    if (!together) {
      return false;
    }
    boolean any = false;
    boolean all = true;
    for (int t : types) {
      any |= counts[t] > 0;
      all &= counts[t] > 0;
    }
    return any && !all;
  }
}
