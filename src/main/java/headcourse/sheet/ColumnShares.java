package headcourse.sheet;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.TextFlow;
import headcourse.sheet.Table.Column;
import java.util.ArrayList;
import java.util.List;

/**
 * Shares a width out among the columns of a table by their weights; a column that needs less than
 * its share, for its cells to stand in one line, leaves the rest to those that need more. As long
 * as there is room, no word is broken.
 */
public final class ColumnShares {
  private ColumnShares() {}

  /**
   * The columns with their widths.
   *
   * @param weighted columns whose widths are weights
   * @param rows their cells
   * @param lettering of the cells
   * @param width what there is, mm
   */
  public static List<Column> of(
      List<Column> weighted, List<List<String>> rows, Lettering lettering, double width) {
    int n = weighted.size();
    double[] need = new double[n];
    for (int i = 0; i < n; i++) {
      need[i] = need(weighted.get(i), i, rows, lettering);
    }
    double[] share = new double[n];
    boolean[] settled = new boolean[n];
    double rest = width;
    boolean again = true;
    while (again) {
      again = false;
      double weight = weight(weighted, settled);
      double each = weight > 0 ? rest / weight : 0;
      for (int i = 0; i < n; i++) {
        if (!settled[i] && need[i] <= weighted.get(i).width() * each) {
          share[i] = need[i];
          settled[i] = true;
          rest -= need[i];
          again = true;
          break;
        }
      }
    }
    double open = weight(weighted, settled);
    double all = weight(weighted, new boolean[n]);
    double[] least = new double[n];
    for (int i = 0; i < n; i++) {
      // Where no column is short, what is left goes to all.
      double more = open > 0 ? (settled[i] ? 0 : rest / open) : rest / all;
      share[i] += weighted.get(i).width() * more;
      least[i] = least(weighted.get(i), i, rows, lettering);
    }
    lend(share, least);
    List<Column> out = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Column c = weighted.get(i);
      out.add(new Column(c.heading(), share[i], c.align(), c.bold()));
    }
    return out;
  }

  /**
   * A table in columns shared out over a width, in the lettering wanted; in the least where only
   * that leaves every word and every figure whole.
   */
  public static Table table(
      List<Column> weighted, List<List<String>> rows, Lettering wanted, double width) {
    Table table = new Table(of(weighted, rows, wanted, width), rows, wanted);
    if (whole(table) || wanted.height() <= Lettering.LEAST) {
      return table;
    }
    Lettering least = new Lettering(Lettering.LEAST, wanted.bold());
    Table small = new Table(of(weighted, rows, least, width), rows, least);
    return whole(small) ? small : table;
  }

  /** Whether no word of a table is broken. */
  public static boolean whole(Table table) {
    for (int i = 0; i < table.columns().size(); i++) {
      Column c = table.columns().get(i);
      if (least(c, i, table.rows(), table.lettering()) > c.width() + 1e-6) {
        return false;
      }
    }
    return true;
  }

  // Those with more than their longest word lend to those with less, if there is enough.
  private static void lend(double[] share, double[] least) {
    double missing = 0;
    double slack = 0;
    for (int i = 0; i < share.length; i++) {
      missing += Math.max(0, least[i] - share[i]);
      slack += Math.max(0, share[i] - least[i]);
    }
    if (missing > slack) {
      return;
    }
    for (int i = 0; i < share.length && missing > 0; i++) {
      double over = share[i] - least[i];
      share[i] = over > 0 ? share[i] - over / slack * missing : least[i];
    }
  }

  private static double weight(List<Column> columns, boolean[] without) {
    double sum = 0;
    for (int i = 0; i < without.length; i++) {
      sum += without[i] ? 0 : columns.get(i).width();
    }
    return sum;
  }

  /** What a column takes with every cell, and every word of its heading, in one line. */
  private static double need(Column c, int i, List<List<String>> rows, Lettering lettering) {
    Lettering bold = lettering.bold() || c.bold() ? lettering.inBold() : lettering;
    double most = 0;
    for (List<String> row : rows) {
      for (String line : row.get(i).split("\n", -1)) {
        most = Math.max(most, LabelShape.width(line, bold));
      }
    }
    return Math.max(most, heading(c)) + 2 * Table.PAD + 0.1;
  }

  /** What a column takes with every word of its cells and of its heading unbroken. */
  private static double least(Column c, int i, List<List<String>> rows, Lettering lettering) {
    Lettering bold = lettering.bold() || c.bold() ? lettering.inBold() : lettering;
    double most = heading(c);
    for (List<String> row : rows) {
      for (String word : TextFlow.unbroken(row.get(i))) {
        most = Math.max(most, LabelShape.width(word, bold));
      }
    }
    return most + 2 * Table.PAD + 0.1;
  }

  private static double heading(Column c) {
    double most = 0;
    for (String word : c.heading().split("[\n ]", -1)) {
      most = Math.max(most, LabelShape.width(word, new Lettering(Lettering.LEAST, true)));
    }
    return most;
  }
}
