package headcourse.stock;

import headcourse.units.Length;
import java.util.List;

/**
 * Which blank gives which stones, and what is to be bought.
 *
 * @param blanks blanks used, in the order of use
 * @param order what is to be bought
 * @param unfit stones that no blank fits, with the size that would do
 * @param lowerBound no plan uses fewer blanks
 * @param proved whether the plan is proved best
 */
public record StockPlan(
    List<CutBlank> blanks,
    List<OrderLine> order,
    List<Unfit> unfit,
    int lowerBound,
    boolean proved) {
  /** Copies the lists. */
  public StockPlan {
    blanks = List.copyOf(blanks);
    order = List.copyOf(order);
    unfit = List.copyOf(unfit);
  }

  /**
   * A blank and what is cut from it.
   *
   * @param id its mark and number, as in C1#4
   * @param stock mark of its kind
   * @param length arris, or length of a flat
   * @param cuts from the left end
   * @param waste length left over
   */
  public record CutBlank(String id, String stock, Length length, List<Cut> cuts, Length waste) {
    /** Copies the cuts. */
    public CutBlank {
      cuts = List.copyOf(cuts);
    }
  }

  /**
   * A stone on a blank.
   *
   * @param stone full mark of the stone
   * @param at where its outline begins, from the blank's left end
   * @param turned whether it lies end for end
   */
  public record Cut(String stone, Length at, boolean turned) {}

  /**
   * Something to buy.
   *
   * @param stock its mark, or empty where the yard has no name for it
   * @param what corner or flat
   * @param length least length
   * @param face least face leg
   * @param returnLeg least return leg; zero for a flat
   * @param thickness thickness
   * @param count pieces, spares included
   * @param spares how many of them are spare
   * @param price of all, 0 where not known
   */
  public record OrderLine(
      String stock,
      headcourse.job.Stock.Kind what,
      Length length,
      Length face,
      Length returnLeg,
      Length thickness,
      int count,
      int spares,
      double price) {}

  /**
   * A stone that fits no blank in the yard.
   *
   * @param stone its full mark
   * @param reason which measure is short, one line
   * @param length least length of a blank that would do
   * @param face least face leg
   * @param returnLeg least return leg
   */
  public record Unfit(String stone, String reason, Length length, Length face, Length returnLeg) {}
}
