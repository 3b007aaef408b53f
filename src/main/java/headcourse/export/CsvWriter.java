package headcourse.export;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Writes comma-separated values after RFC 4180. A spreadsheet takes what begins with certain signs
 * for a formula and runs it (OWASP, CSV Injection); such a text gets an apostrophe before it.
 */
final class CsvWriter {
  /** Where a formula could begin: also after signs that some spreadsheets part cells at. */
  private static final Pattern FORMULA =
      Pattern.compile("(?<=^|[;\\t\\r\\n])(?=[=+@\\t\\r\\n\\uFF1D\\uFF0B\\uFF0D\\uFF20-])");

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+|/\\d+| \\d+/\\d+)?");

  private final StringBuilder out = new StringBuilder();

  /**
   * A column.
   *
   * @param name its heading
   * @param cell what it says of a row
   */
  record Column<R>(String name, Function<R, String> cell) {}

  /** A table: a heading, then the rows. */
  static <R> String table(List<Column<R>> columns, List<R> rows) {
    CsvWriter csv = new CsvWriter();
    csv.row(columns.stream().map(Column::name).toList());
    for (R r : rows) {
      csv.row(columns.stream().map(c -> c.cell.apply(r)).toList());
    }
    return csv.out.toString();
  }

  private void row(List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      if (i > 0) {
        out.append(',');
      }
      cell(cells.get(i));
    }
    out.append("\r\n");
  }

  private void cell(String text) {
    String s = harmless(text);
    if (quoted(s)) {
      out.append('"').append(s.replace("\"", "\"\"")).append('"');
    } else {
      out.append(s);
    }
  }

  private static String harmless(String s) {
    return s.isEmpty() || NUMBER.matcher(s).matches() ? s : FORMULA.matcher(s).replaceAll("'");
  }

  private static boolean quoted(String s) {
    for (int i = 0; i < s.length(); i++) {
      char c = s.charAt(i);
      if (c == ',' || c == '"' || c == '\n' || c == '\r') {
        return true;
      }
    }
    return false;
  }
}
