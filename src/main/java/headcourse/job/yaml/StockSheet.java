package headcourse.job.yaml;

import headcourse.diag.Span;
import headcourse.job.Stock;
import headcourse.units.Length;
import headcourse.units.NotationException;
import headcourse.units.NumberParser;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads blanks from a spreadsheet saved as CSV; its first row names the columns, in any order. */
final class StockSheet {
  private static final List<String> COLUMNS =
      List.of(
          "kind",
          "mark",
          "arris",
          "face",
          "return",
          "length",
          "height",
          "thickness",
          "count",
          "price");

  /** A sheet with more columns is some other sheet. */
  private static final int MOST_COLUMNS = 64;

  /** No yard has more kinds of blanks. */
  private static final int MOST_ROWS = 5000;

  private final Reading in;
  private final String name;
  private final Length thickness;
  private JobText text;

  StockSheet(Reading in, String name, Length thickness) {
    this.in = in;
    this.name = name;
    this.thickness = thickness;
  }

  List<Stock.Item> read(byte[] bytes) {
    Optional<JobText> decoded = JobText.decode(name, bytes, in.problems);
    if (decoded.isEmpty()) {
      return List.of();
    }
    text = decoded.get();
    List<List<CsvRows.Cell>> rows = CsvRows.of(text.text());
    if (rows.isEmpty()) {
      in.problems.error(
          text.start(),
          "the sheet is empty; expected a first row with " + String.join(", ", COLUMNS));
      return List.of();
    }
    if (rows.get(0).size() > MOST_COLUMNS) {
      error(
          rows.get(0).get(MOST_COLUMNS),
          "more than " + MOST_COLUMNS + " columns; expected " + String.join(", ", COLUMNS));
      return List.of();
    }
    if (rows.size() > MOST_ROWS) {
      error(rows.get(MOST_ROWS).get(0), "more than " + MOST_ROWS + " rows; expected fewer");
      return List.of();
    }
    List<String> header = header(rows.get(0));
    List<Stock.Item> items = new ArrayList<>();
    for (List<CsvRows.Cell> row : rows.subList(1, rows.size())) {
      items.add(item(header, row, items.size()));
    }
    return items;
  }

  private List<String> header(List<CsvRows.Cell> row) {
    List<String> names = new ArrayList<>();
    for (CsvRows.Cell c : row) {
      String n = c.text().toLowerCase(Locale.ROOT);
      if (!n.isEmpty() && !COLUMNS.contains(n)) {
        String[] hint =
            Nearest.to(n, COLUMNS)
                .map(w -> new String[] {"did you mean " + w + "?"})
                .orElse(new String[0]);
        error(
            c,
            "unknown column " + Reading.quoted(n) + "; expected " + String.join(", ", COLUMNS),
            hint);
      } else if (!n.isEmpty() && names.contains(n)) {
        error(c, "column " + n + " stands here a second time; keep one");
      }
      names.add(n);
    }
    if (!names.contains("mark")) {
      error(row.get(0), "no column mark; expected one, so that each blank has a name");
    }
    return names;
  }

  private Stock.Item item(List<String> header, List<CsvRows.Cell> row, int number) {
    Map<String, CsvRows.Cell> cells = new LinkedHashMap<>();
    for (int i = 0; i < row.size(); i++) {
      if (i >= header.size()) {
        if (!row.get(i).text().isEmpty()) {
          error(row.get(i), "a cell beyond the last column; expected " + header.size() + " cells");
          break;
        }
      } else if (!row.get(i).text().isEmpty()) {
        cells.put(header.get(i), row.get(i));
      }
    }
    CsvRows.Cell first = row.get(0);
    String path = "stock.file[" + number + "]";
    in.spans.put(path, at(first));
    CsvRows.Cell markCell = cells.get("mark");
    String mark = markCell == null ? "" : markCell.text();
    in.spans.put(path + ".mark", at(markCell == null ? first : markCell));
    if (!mark.matches(StockReader.MARK)) {
      error(
          markCell == null ? first : markCell,
          Reading.quoted(mark) + " can't be a mark; expected 1 to 16 letters, digits, . - or _");
    }
    String kind = cells.containsKey("kind") ? cells.get("kind").text() : "";
    if (!List.of("", "corner", "flat", "order").contains(kind)) {
      error(
          cells.get("kind"), Reading.quoted(kind) + " is no kind; expected corner, flat or order");
    }
    // A column left empty does not make another kind of it.
    boolean corner = cells.containsKey("arris") || cells.containsKey("return");
    boolean flat = kind.equals("flat") || !kind.equals("corner") && !corner;
    Map<String, CsvRows.Cell> empty = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(row.size(), header.size()); i++) {
      empty.put(header.get(i), row.get(i));
    }
    return new Stock.Item(
        path,
        mark,
        flat ? Stock.Kind.FLAT : Stock.Kind.CORNER,
        needed(cells, flat ? "length" : "arris", first, empty),
        needed(cells, flat ? "height" : "face", first, empty),
        flat ? Length.ZERO : needed(cells, "return", first, empty),
        cells.containsKey("thickness") ? needed(cells, "thickness", first, empty) : thickness,
        (int) number(cells, "count", 1, StockReader.MOST, true),
        kind.equals("order"),
        number(cells, "price", 0, 1e9, false));
  }

  private Length needed(
      Map<String, CsvRows.Cell> cells,
      String column,
      CsvRows.Cell first,
      Map<String, CsvRows.Cell> empty) {
    CsvRows.Cell c = cells.get(column);
    if (c == null) {
      error(empty.getOrDefault(column, first), "this row has no " + column + "; expected a length");
      return Length.inches(1);
    }
    Length v =
        Lengths.read(c.text(), Range.POSITIVE, in, (message, hints) -> error(c, message, hints));
    return v == null ? Length.inches(1) : v;
  }

  private double number(
      Map<String, CsvRows.Cell> cells, String column, double otherwise, double max, boolean whole) {
    CsvRows.Cell c = cells.get(column);
    if (c == null) {
      return otherwise;
    }
    try {
      double v = NumberParser.parse(c.text());
      if (v >= 0 && v <= max && (!whole || v == Math.rint(v))) {
        return v;
      }
    } catch (NotationException e) {
      // Told below, with what is out of range.
    }
    error(
        c,
        Reading.quoted(c.text())
            + " is no "
            + column
            + "; expected "
            + (whole ? "a whole number to " + (long) max : "a number of 0 or more"));
    return otherwise;
  }

  private Span at(CsvRows.Cell c) {
    return text.at(c.index(), c.length());
  }

  private void error(CsvRows.Cell c, String message, String... hints) {
    in.problems.error(at(c), message, hints);
  }
}
