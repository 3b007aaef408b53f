package headcourse.job;

import headcourse.units.Length;
import java.util.List;

/**
 * What lies in the yard, and what can be ordered.
 *
 * @param items in the order of the file, those of a spreadsheet after the rest
 * @param spare fraction ordered over, 0 … 1
 * @param trim what a size that is not in the list, and has to be ordered, is to have over the
 *     finished stone
 */
public record Stock(List<Item> items, double spare, Length trim) {
  /** Nothing is said of the yard: blanks are taken to be as large as each stone needs. */
  public static final Stock UNSAID = new Stock(List.of(), 0.1);

  /** A yard without a trimming allowance. */
  public Stock(List<Item> items, double spare) {
    this(items, spare, Length.ZERO);
  }

  /** Copies the items. */
  public Stock {
    items = List.copyOf(items);
  }

  /** What kind of blank it is. */
  public enum Kind {
    /** L-shaped. */
    CORNER,
    /** Without a return. */
    FLAT
  }

  /**
   * Blanks that are alike.
   *
   * @param path where it stands in the job, as in {@code stock.corners[0]}
   * @param mark its mark
   * @param kind L-shaped or flat
   * @param length arris of a corner, length of a flat
   * @param face face leg of a corner, height of a flat
   * @param returnLeg outside length of the return leg; zero for a flat
   * @param thickness how thick it is
   * @param count how many lie there; of what is made to order no more than these are to be had, 0
   *     for as many as needed
   * @param toOrder whether it is made to order
   * @param price price of one, 0 where not given
   * @param trim what is to be left over the finished face, return and length of a stone, to trim
   *     away; zero for what lies in the yard
   * @param lead days from the order to delivery, or null where not given
   */
  public record Item(
      String path,
      String mark,
      Kind kind,
      Length length,
      Length face,
      Length returnLeg,
      Length thickness,
      int count,
      boolean toOrder,
      double price,
      Length trim,
      Integer lead) {
    /** What lies in the yard, or is ordered without a trimming allowance or a lead time. */
    public Item(
        String path,
        String mark,
        Kind kind,
        Length length,
        Length face,
        Length returnLeg,
        Length thickness,
        int count,
        boolean toOrder,
        double price) {
      this(
          path,
          mark,
          kind,
          length,
          face,
          returnLeg,
          thickness,
          count,
          toOrder,
          price,
          Length.ZERO,
          null);
    }
  }
}
