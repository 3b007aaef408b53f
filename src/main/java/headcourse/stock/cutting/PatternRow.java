package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A row of the master problem beside those that ask for the parts: how many patterns of a certain
 * kind a plan has is at most, or at least, so many. Branching makes such rows, and so do kinds of
 * blank that may run out.
 *
 * @param bin the kind of blank, or {@link #ANY}
 * @param types that a blank must hold to be counted, in their order
 * @param least how many of each
 * @param atLeast whether there must be so many of them, rather than no more
 * @param bound so many
 */
record PatternRow(int bin, int[] types, int[] least, boolean atLeast, int bound) {
  /** In place of a kind of blank. */
  static final int ANY = -1;

  /**
   * Patterns that hold no fewer of each type than given.
   *
   * @param bin the kind of blank, or {@link #ANY}
   * @param load how many of each type
   * @param atLeast whether there must be so many of them, rather than no more
   */
  static PatternRow holding(int bin, int[] load, boolean atLeast, int bound) {
    int[] types = Nesting.present(load);
    int[] least = Arrays.stream(types).map(t -> load[t]).toArray();
    return new PatternRow(bin, types, least, atLeast, bound);
  }

  /** No more blanks of each kind that may run out than there are. */
  static List<PatternRow> limits(CuttingProblem problem) {
    List<PatternRow> limits = new ArrayList<>();
    int[] any = new int[problem.demand().length];
    for (int b = 0; b < problem.bins().size(); b++) {
      int count = problem.bins().get(b).count();
      if (count < problem.parts()) {
        limits.add(holding(b, any, false, count));
      }
    }
    return limits;
  }

  /** Whether it may count blanks of a kind. */
  boolean on(int kind) {
    return bin == ANY || bin == kind;
  }

  /** Whether it is of that kind of blank, whatever lies on it. */
  boolean counts(int kind) {
    return bin == kind && types.length == 0;
  }

  boolean has(int type) {
    return Arrays.binarySearch(types, type) >= 0;
  }

  /** How many parts a blank must hold to be counted. */
  int size() {
    return Arrays.stream(least).sum();
  }

  /** How many of them lie there. */
  int present(int[] counts) {
    return IntStream.range(0, types.length).map(k -> Math.min(counts[types[k]], least[k])).sum();
  }

  /** How often it counts a blank; never less when more lies on the blank. */
  int of(int kind, int[] counts) {
    if (!on(kind)) {
      return 0;
    }
    for (int k = 0; k < types.length; k++) {
      if (counts[types[k]] < least[k]) {
        return 0;
      }
    }
    return 1;
  }

  /** Whether no blank filled like this, nor one with more on it, is of use. */
  boolean forbids(int kind, int[] counts) {
    return !atLeast && bound == 0 && of(kind, counts) > 0;
  }
}
