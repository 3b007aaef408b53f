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
  private final int size;

  private PatternRow(int bin, int[] types, int[] least, boolean atLeast, int bound) {
    this.bin = bin;
    this.types = types;
    this.least = least;
    this.atLeast = atLeast;
    this.bound = bound;
    this.size = Arrays.stream(least).sum();
  }

  /**
   * Patterns that hold no fewer of each type than given.
   *
   * @param bin the kind of blank, or −1 for any
   * @param load how many of each type
   * @param atLeast whether there must be so many of them, rather than no more
   */
  static PatternRow holding(int bin, int[] load, boolean atLeast, int bound) {
    int[] types = Nesting.present(load);
    int[] least = Arrays.stream(types).map(t -> load[t]).toArray();
    return new PatternRow(bin, types, least, atLeast, bound);
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
}
