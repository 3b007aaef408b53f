package headcourse.export;

import headcourse.export.CsvWriter.Column;
import headcourse.stock.StockPlan.OrderLine;
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
    List<Column<OrderLine>> columns =
        List.of(
            new Column<>("stock", o -> o.stock()),
            new Column<>("kind", o -> o.what().name().toLowerCase(Locale.ROOT)),
            new Column<>("count", o -> Integer.toString(o.count())),
            new Column<>("spares", o -> Integer.toString(o.spares())),
            new Column<>("length", o -> CsvWriter.size(format, o.length())),
            new Column<>("face", o -> CsvWriter.size(format, o.face())),
            new Column<>("return", o -> CsvWriter.size(format, o.returnLeg())),
            new Column<>("thickness", o -> CsvWriter.size(format, o.thickness())),
            new Column<>("length-mm", o -> JsonWriter.decimal(o.length().mm())),
            new Column<>("face-mm", o -> JsonWriter.decimal(o.face().mm())),
            new Column<>("return-mm", o -> JsonWriter.decimal(o.returnLeg().mm())),
            new Column<>("thickness-mm", o -> JsonWriter.decimal(o.thickness().mm())),
            new Column<>("running-m", o -> JsonWriter.decimal(o.running().mm() / 1000)),
            new Column<>("area-m2", o -> JsonWriter.decimal(o.areaM2())),
            new Column<>("price", o -> o.price() == 0 ? "" : JsonWriter.decimal(o.price())),
            new Column<>("lead-days", o -> o.lead() == null ? "" : o.lead().toString()),
            new Column<>("order-by", o -> o.orderBy()));
    return CsvWriter.table(columns, work.stock().order());
  }
}
