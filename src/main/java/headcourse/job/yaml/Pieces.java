package headcourse.job.yaml;

import headcourse.job.Stock;
import java.util.HashMap;
import java.util.Map;

/** The numbered blanks of a job's stock, as a job names them. */
final class Pieces {
  private final Map<String, Stock.Item> blanks = new HashMap<>();

  Pieces(Stock stock) {
    stock.items().forEach(b -> blanks.putIfAbsent(b.mark(), b));
  }

  /** Whether a text is the mark of a kind of blank. */
  boolean kind(String s) {
    return blanks.containsKey(s);
  }

  /** Whether a text names a blank of the stock, or an off-cut of one; says so where it does not. */
  boolean lies(Item i, String s) {
    if (!s.matches("[^#\\s]{1,16}#[1-9][0-9]{0,4}(/[1-9][0-9]?)?")) {
      i.error(Reading.quoted(s) + " names no piece; expected a blank with its number, as C2#3");
      return false;
    }
    String mark = s.substring(0, s.indexOf('#'));
    int number = Integer.parseInt(s.substring(s.indexOf('#') + 1).replaceAll("/.*", ""));
    Stock.Item item = blanks.get(mark);
    if (item == null) {
      i.error("the stock has no blank " + Reading.quoted(mark) + "; expected a mark from stock:");
    } else if (!item.toOrder() && number > item.count()) {
      i.error("there are only " + item.count() + " of " + mark + "; expected a number to that");
    }
    return item != null && (item.toOrder() || number <= item.count());
  }
}
