package headcourse.job.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Splits a CSV text (RFC 4180, or with semicolons) into rows of cells that know their place. */
final class CsvRows {
  /**
   * A cell.
   *
   * @param text without its quotes
   * @param index code point in the text where it begins
   * @param length code points that it takes there
   */
  record Cell(String text, int index, int length) {}

  /** Longer lines name no columns. */
  private static final int LONGEST = 2000;

  private final int[] points;
  private final int comma;
  private int at;

  private CsvRows(String text) {
    points = text.codePoints().toArray();
    // A title above the columns' names need not have cells.
    String first =
        text.lines()
            .limit(20)
            .filter(l -> l.length() <= LONGEST && l.toLowerCase(Locale.ROOT).contains("mark"))
            .filter(l -> l.indexOf(';') >= 0 || l.indexOf('\t') >= 0 || l.indexOf(',') >= 0)
            .findFirst()
            .orElse(text.lines().findFirst().orElse(""));
    comma = first.indexOf(';') >= 0 ? ';' : first.indexOf('\t') >= 0 ? '\t' : ',';
  }

  /** All rows but empty ones. */
  static List<List<Cell>> of(String text) {
    CsvRows rows = new CsvRows(text);
    List<List<Cell>> all = new ArrayList<>();
    while (rows.at < rows.points.length) {
      List<Cell> row = rows.row();
      if (row.stream().anyMatch(c -> !c.text().isBlank())) {
        all.add(row);
      }
    }
    return all;
  }

  private List<Cell> row() {
    List<Cell> row = new ArrayList<>();
    while (true) {
      row.add(cell());
      if (at >= points.length) {
        return row;
      }
      int end = points[at++];
      if (end == '\r' && at < points.length && points[at] == '\n') {
        at++;
      }
      if (end != comma) {
        return row;
      }
    }
  }

  private Cell cell() {
    int from = at;
    StringBuilder s = new StringBuilder();
    boolean quoted = at < points.length && points[at] == '"';
    if (quoted) {
      at++;
      while (at < points.length) {
        if (points[at] == '"') {
          at++;
          if (at >= points.length || points[at] != '"') {
            break;
          }
        }
        s.appendCodePoint(points[at++]);
      }
    }
    // Inch marks stand bare within cells that are not quoted.
    while (at < points.length && points[at] != comma && points[at] != '\n' && points[at] != '\r') {
      s.appendCodePoint(points[at++]);
    }
    return new Cell(s.toString().strip(), from, Math.max(1, at - from));
  }
}
