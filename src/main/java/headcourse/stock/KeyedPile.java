package headcourse.stock;

import headcourse.layout.flat.FlatHead;
import headcourse.stock.pile.Pile;
import java.util.List;

/**
 * Heads with their keys settled, and the stones chosen for them.
 *
 * @param sides the heads
 * @param answer the stones
 * @param taken which piece is which stone, keys included
 */
record KeyedPile(List<Sides> sides, Pile.Answer answer, List<FromStock.Taken> taken) {
  /** Copies the lists. */
  KeyedPile {
    sides = List.copyOf(sides);
    taken = List.copyOf(taken);
  }

  /** A head and its two sides. */
  record Sides(FlatHead head, FlatSide left, FlatSide right) {}
}
