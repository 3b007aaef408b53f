package headcourse.testing;

import headcourse.job.Stock;
import headcourse.units.Length;

/** Blanks for tests, 1¼ in thick; sizes in inches. */
public final class StockItems {
  private StockItems() {}

  public static Stock.Item corner(String mark, double arris, double face, double back, int count) {
    return item("corners", mark, Stock.Kind.CORNER, arris, face, back, count);
  }

  public static Stock.Item flat(String mark, double length, double height, int count) {
    return item("flats", mark, Stock.Kind.FLAT, length, height, 0, count);
  }

  private static Stock.Item item(
      String list, String mark, Stock.Kind kind, double length, double face, double back, int n) {
    return new Stock.Item(
        "stock." + list + "[0]",
        mark,
        kind,
        Length.inches(length),
        Length.inches(face),
        Length.inches(back),
        Length.inches(1.25),
        n,
        false,
        0);
  }
}
