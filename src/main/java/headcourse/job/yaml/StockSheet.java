package headcourse.job.yaml;

import headcourse.diag.Span;
import headcourse.job.Stock;
import headcourse.units.Length;
import headcourse.units.NotationException;
import headcourse.units.NumberParser;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads blanks from a spreadsheet saved as CSV. A row names the columns, in any order; above it may
 * stand a title, beside them notes, below a sum. Faults of one column are told once.
 */
final class StockSheet {
  private static final List<String> COLUMNS = SheetHead.COLUMNS;

  /** A sheet with more columns is some other sheet. */
  private static final int MOST_COLUMNS = 64;

  /** So many faults of one column are told one by one. */
  private static final int MOST_OF_ONE = 3;

  /** No yard has more kinds of blanks. */
  private static final int MOST_ROWS = 5000;

  private final Reading in;
  private final String name;
  private final Length thickness;
  private final Length trim;
  private final Map<String, List<Fault>> faults = new LinkedHashMap<>();
  private List<String> header = List.of();
  private List<String> units = List.of();
  private boolean misnamed;
  private JobText text;

  StockSheet(Reading in, String name, Length thickness, Length trim) {
    this.trim = trim;
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
    for (List<CsvRows.Cell> row : rows) {
      if (row.size() > MOST_COLUMNS) {
        error(
            row.get(MOST_COLUMNS),
            "more than " + MOST_COLUMNS + " columns; expected " + String.join(", ", COLUMNS));
        return List.of();
      }
    }
    if (rows.size() > MOST_ROWS) {
      error(rows.get(MOST_ROWS).get(0), "more than " + MOST_ROWS + " rows; expected fewer");
      return List.of();
    }
    int head = SheetHead.find(rows).orElse(0);
    header = header(rows.get(head));
    units = rows.get(head).stream().map(c -> SheetHead.unit(c.text())).toList();
    List<Stock.Item> items = new ArrayList<>();
    for (List<CsvRows.Cell> row : rows.subList(head + 1, rows.size())) {
      if (!SheetHead.noBlank(header, row)) {
        items.add(item(row, items.size()));
      }
    }
    tell();
    return items;
  }

  /** Something wrong with a cell. */
  private record Fault(CsvRows.Cell cell, String message, String[] hints) {}

  /** A column's faults are of one kind as a rule; more than a few are told by the first. */
  private void tell() {
    // What a row lacks may stand in the column that has no name that is known.
    faults.keySet().removeIf(c -> misnamed && c.startsWith("no "));
    if (!header.contains("mark")) {
      faults.remove("mark");
    }
    faults.forEach(
        (column, all) -> {
          List<Fault> told = all.size() > MOST_OF_ONE ? all.subList(0, 1) : all;
          for (Fault f : told) {
            List<String> hints = new ArrayList<>(List.of(f.hints()));
            if (all.size() > told.size()) {
              hints.add(
                  "so with "
                      + (all.size() - 1)
                      + " more cells of this column, the last in line "
                      + at(all.get(all.size() - 1).cell()).line());
            }
            error(f.cell(), f.message(), hints.toArray(String[]::new));
          }
        });
  }

  private void fault(String column, CsvRows.Cell cell, String message, String... hints) {
    faults.computeIfAbsent(column, k -> new ArrayList<>()).add(new Fault(cell, message, hints));
  }

  private List<String> header(List<CsvRows.Cell> row) {
    List<String> names = new ArrayList<>();
    for (CsvRows.Cell c : row) {
      String n = SheetHead.name(c.text());
      if (SheetHead.note(n)) {
        names.add("");
        continue;
      }
      if (!n.isEmpty() && !COLUMNS.contains(n)) {
        String[] hint =
            Nearest.to(n, COLUMNS)
                .map(w -> new String[] {"did you mean " + w + "?"})
                .orElse(new String[0]);
        error(
            c,
            "unknown column " + Reading.quoted(n) + "; expected " + String.join(", ", COLUMNS),
            hint.length > 0 ? hint : new String[] {"what is for people stands under notes"});
      } else if (!n.isEmpty() && names.contains(n)) {
        error(c, "column " + n + " stands here a second time; keep one");
      }
      // A misspelt column is read as the one that was meant, so that its cells are not missed.
      String meant = COLUMNS.contains(n) ? n : Nearest.to(n, COLUMNS).orElse("");
      misnamed |= !n.isEmpty() && meant.isEmpty();
      names.add(meant);
    }
    if (!names.contains("mark")) {
      error(
          row.get(0),
          "no column mark; expected one, so that each blank has a name",
          "the row that names the columns is looked for in the first 20: "
              + String.join(", ", COLUMNS));
    }
    return names;
  }

  private Stock.Item item(List<CsvRows.Cell> row, int number) {
    Map<String, CsvRows.Cell> cells = new LinkedHashMap<>();
    for (int i = 0; i < row.size(); i++) {
      if (i >= header.size()) {
        if (!row.get(i).text().isEmpty()) {
          fault(
              "beyond",
              row.get(i),
              "a cell beyond the last column; expected " + header.size() + " cells",
              "a comma in a number or a text parts its cell: put that in quotes, as \"7,5\"");
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
      fault(
          "mark",
          markCell == null ? first : markCell,
          Reading.quoted(mark) + " can't be a mark; expected 1 to 16 letters, digits, . - or _");
    }
    String kind = cells.containsKey("kind") ? cells.get("kind").text() : "";
    if (!List.of("", "corner", "flat", "order").contains(kind)) {
      fault(
          "kind",
          cells.get("kind"),
          Reading.quoted(kind) + " is no kind; expected corner, flat or order");
    }
    boolean order = kind.equals("order");
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
        (int) number(cells, "count", order ? 0 : 1, StockReader.MOST, true),
        order,
        number(cells, "price", 0, 1e9, false),
        !order ? Length.ZERO : cells.containsKey("trim") ? trim(cells.get("trim")) : trim,
        order && cells.containsKey("lead")
            ? Integer.valueOf((int) number(cells, "lead", 0, StockReader.MOST, true))
            : null);
  }

  private Length needed(
      Map<String, CsvRows.Cell> cells,
      String column,
      CsvRows.Cell first,
      Map<String, CsvRows.Cell> empty) {
    CsvRows.Cell c = cells.get(column);
    if (c == null) {
      fault(
          "no " + column,
          empty.getOrDefault(column, first),
          "this row has no " + column + "; expected a length");
      return Length.inches(1);
    }
    String plain = SheetHead.length(c.text(), unit(column), in.units == Units.INCH);
    Length v =
        Lengths.read(
            plain, Range.POSITIVE, in, (message, hints) -> fault(column, c, message, hints));
    return v == null ? Length.inches(1) : v;
  }

  private Length trim(CsvRows.Cell c) {
    String plain = SheetHead.length(c.text(), unit("trim"), in.units == Units.INCH);
    Length v =
        Lengths.read(
            plain, Range.NOT_NEGATIVE, in, (message, hints) -> fault("trim", c, message, hints));
    return v == null ? Length.ZERO : v;
  }

  private String unit(String column) {
    int i = header.indexOf(column);
    return i < 0 || i >= units.size() ? "" : units.get(i);
  }

  private double number(
      Map<String, CsvRows.Cell> cells, String column, double otherwise, double max, boolean whole) {
    CsvRows.Cell c = cells.get(column);
    if (c == null) {
      return otherwise;
    }
    try {
      double v = NumberParser.parse(SheetHead.length(c.text(), "", true));
      if (v >= 0 && v <= max && (!whole || v == Math.rint(v))) {
        return v;
      }
    } catch (NotationException e) {
      // Told below, with what is out of range.
    }
    fault(
        column,
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
