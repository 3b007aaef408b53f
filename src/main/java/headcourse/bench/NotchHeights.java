package headcourse.bench;

import headcourse.geom.Tolerance;
import headcourse.units.Grid;
import headcourse.units.Length;
import java.util.List;
import java.util.function.DoubleToIntFunction;

/**
 * Finds where along an edge screws go: above the centre of mass, clear of both ends, and where the
 * neighbour covers the slot. Distances from the edge's lower end, mm.
 *
 * @param contact what covers the edge
 * @param mass the height of the centre of mass along the edge
 * @param clear least distance from the edge's ends
 * @param headHalf half the screw's head, kept within what is covered
 * @param rank how well a screw would hold at a distance from the edge's lower end, best nought
 * @param two whether the stone is so long that it takes two
 */
record NotchHeights(
    Contact contact,
    double mass,
    double clear,
    double headHalf,
    DoubleToIntFunction rank,
    boolean two) {
  /** The heights, on the grid, lowest first. */
  List<Length> on(Grid grid) {
    double low = Math.max(clear, contact.from() + headHalf);
    double high = Math.min(contact.length() - clear, contact.to() - headHalf);
    double quarter = contact.length() / 4;
    double lower = Math.max(low, quarter);
    double upper = Math.max(Math.min(high, contact.length() - quarter), mass);
    if (two && upper <= high + Tolerance.SAME && upper - lower >= clear - Tolerance.SAME) {
      Length first = placed(grid, low, lower, upper);
      double least = Math.max(lower, mass);
      Length second = placed(grid, least, upper, high);
      boolean apart = second.minus(first).mm() >= clear - Tolerance.SAME;
      return List.of(first, apart ? second : nearest(grid, least, upper, high));
    }
    double least = Math.max(low, mass);
    if (least <= high + Tolerance.SAME) {
      return List.of(placed(grid, least, (least + high) / 2, high));
    }
    if (low <= high + Tolerance.SAME) {
      // The stone's weight lies beyond the edge's end; as near to it as the end allows.
      return List.of(placed(grid, low, high, high));
    }
    // Too short to keep every distance: what is covered comes first, then the centre of mass.
    double from = Math.max(contact.from(), Math.min(mass, contact.to()));
    return List.of(placed(grid, from, (from + contact.to()) / 2, contact.to()));
  }

  /** Of the ticks within bounds where a screw holds best the one nearest a height. */
  private Length placed(Grid grid, double least, double wish, double most) {
    Length found = nearest(grid, least, wish, most);
    int best = rank.applyAsInt(found.mm());
    long at = grid.nearest(found);
    long from = grid.ceil(Length.mm(least - Tolerance.SAME));
    long to = grid.floor(Length.mm(most + Tolerance.SAME));
    for (long off = 1; best > 0 && (at - off >= from || at + off <= to); off++) {
      for (long n : new long[] {at - off, at + off}) {
        int there = n < from || n > to ? best : rank.applyAsInt(grid.ticks(n).mm());
        if (there < best) {
          best = there;
          found = grid.ticks(n);
        }
      }
    }
    return found;
  }

  /** The tick nearest a height, within bounds if any tick is. */
  private static Length nearest(Grid grid, double least, double wish, double most) {
    // Halfway between ticks the last digits must not decide: alike stones are slotted alike.
    long nearest = grid.nearest(Length.mm(wish + Tolerance.SAME));
    long from = grid.ceil(Length.mm(least - Tolerance.SAME));
    long to = grid.floor(Length.mm(most + Tolerance.SAME));
    return grid.ticks(from <= to ? Math.min(Math.max(nearest, from), to) : nearest);
  }
}
