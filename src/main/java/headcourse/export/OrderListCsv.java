package headcourse.export;

import headcourse.stock.StockPlan;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import java.util.List;
import java.util.Locale;

/** What is to be bought: {@code order-list.csv}. */
public final class OrderListCsv {
  private OrderListCsv() {}

  /** The file's text. */
  public static String write(ShopWork work) {
    LengthFormat format = new LengthFormat(work.job().units(), work.job().grid());
    CsvWriter csv = new CsvWriter();
    csv.row(
        List.of(
            "stock",
            "kind",
            "count",
            "spares",
            "length",
            "face",
            "return",
            "thickness",
            "length-mm",
            "face-mm",
            "return-mm",
            "thickness-mm",
            "running-m",
            "area-m2",
            "price"));
    for (StockPlan.OrderLine o : work.stock().order()) {
      csv.row(
          List.of(
              o.stock(),
              o.what().name().toLowerCase(Locale.ROOT),
              Integer.toString(o.count()),
              Integer.toString(o.spares()),
              format.plain(o.length()),
              format.plain(o.face()),
              format.plain(o.returnLeg()),
              format.plain(o.thickness()),
              JsonWriter.decimal(o.length().mm()),
              JsonWriter.decimal(o.face().mm()),
              JsonWriter.decimal(o.returnLeg().mm()),
              JsonWriter.decimal(o.thickness().mm()),
              JsonWriter.decimal(o.running().mm() / 1000),
              JsonWriter.decimal(o.areaM2()),
              o.price() == 0 ? "" : JsonWriter.decimal(o.price())));
    }
    return csv.toString();
  }
}
