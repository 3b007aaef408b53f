package headcourse.layout.yard;

import headcourse.layout.Solution;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Heads whose stones were chosen from the yard's pieces.
 *
 * @param solutions by opening in the job's order; null for those of another rhythm
 * @param taken which piece is which stone
 * @param changes stones that a spoiled piece moved to another
 */
public record FromStock(List<Solution> solutions, List<Taken> taken, List<Moved> changes) {
  /** No heads of this kind. */
  public static final FromStock NONE = new FromStock(List.of(), List.of(), List.of());

  /** Copies the lists. */
  public FromStock {
    solutions = Collections.unmodifiableList(new ArrayList<>(solutions));
    taken = List.copyOf(taken);
    changes = List.copyOf(changes);
  }

  /**
   * A piece and its stone.
   *
   * @param stone full mark of the stone
   * @param copy which of the identical openings, from 1
   * @param piece mark and number of the piece, as in C2#1
   * @param extent what it must give along its arris, ticks
   */
  public record Taken(String stone, int copy, String piece, long extent) {}

  /**
   * A stone that comes from another piece than before.
   *
   * @param stone full mark of the stone
   * @param from the piece before
   * @param to the piece now; empty where it must be ordered
   */
  public record Moved(String stone, String from, String to) {}
}
