package headcourse.stock;

import headcourse.layout.Solution;
import java.util.List;

/**
 * Heads whose stones were chosen from the yard's pieces.
 *
 * @param solutions by opening in the job's order; null for those of another rhythm
 * @param taken which piece is which stone
 * @param changes stones that a spoiled piece moved to another
 */
public record FromStock(
    List<Solution> solutions, List<Taken> taken, List<StockPlan.Moved> changes) {
  /** No heads of this kind. */
  public static final FromStock NONE = new FromStock(List.of(), List.of(), List.of());

  /** Copies the lists. */
  public FromStock {
    solutions = java.util.Collections.unmodifiableList(new java.util.ArrayList<>(solutions));
    taken = List.copyOf(taken);
    changes = List.copyOf(changes);
  }

  /** Whether the job has heads of this kind. */
  public boolean any() {
    return solutions.stream().anyMatch(s -> s != null);
  }

  /**
   * A piece and its stone.
   *
   * @param stone full mark of the stone
   * @param copy which of the identical openings, from 1
   * @param piece mark and number of the piece, as in C2#1
   * @param extent what it must give along its arris, ticks
   */
  public record Taken(String stone, int copy, String piece, long extent) {
    /** The same stone from another piece. */
    Taken from(String other) {
      return new Taken(stone, copy, other, extent);
    }
  }
}
