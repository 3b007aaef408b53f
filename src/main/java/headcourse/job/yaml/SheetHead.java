package headcourse.job.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the row of a spreadsheet that names its columns, below whatever title stands over it, and
 * knows the rows that name no blank.
 */
final class SheetHead {
  static final List<String> COLUMNS =
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
          "price",
          "trim",
          "lead");

  private static final String UNITS = "(in\\.?|inch|inches|mm|cm|\")";

  /**
   * A unit after a name: {@code arris (in)}, {@code arris [mm]}, {@code arris, in}, {@code arris
   * in}.
   */
  private static final Pattern UNIT =
      Pattern.compile("\\s*[(\\[]" + UNITS + "[)\\]]|(?:\\s*[,_/]\\s*|\\s+)" + UNITS + "$");

  /** Other names, where there is no doubt which column is meant. */
  private static final Map<String, String> OTHER =
      Map.ofEntries(
          Map.entry("qty", "count"),
          Map.entry("quantity", "count"),
          Map.entry("how many", "count"),
          Map.entry("pieces", "count"),
          Map.entry("pcs", "count"),
          Map.entry("arris length", "arris"),
          Map.entry("face height", "face"),
          Map.entry("return length", "return"),
          Map.entry("thick", "thickness"),
          Map.entry("lead time", "lead"),
          Map.entry("type", "kind"));

  /** Columns that are for people. */
  private static final Set<String> NOTES =
      Set.of(
          "note",
          "notes",
          "remark",
          "remarks",
          "comment",
          "comments",
          "where",
          "nota",
          "notas",
          "observaciones");

  private static final List<String> SIZES = List.of("arris", "face", "return", "length", "height");

  private static final Pattern SUM =
      Pattern.compile("((sub|grand )?totals?|sum|suma)(\\W.*)?", Pattern.CASE_INSENSITIVE);

  /** Titles are no longer than this. */
  private static final int MOST_ABOVE = 20;

  private SheetHead() {}

  /** Number of the row that names the columns: the first that has a mark, or two other columns. */
  static Optional<Integer> find(List<List<CsvRows.Cell>> rows) {
    for (int i = 0; i < Math.min(MOST_ABOVE, rows.size()); i++) {
      List<String> names = rows.get(i).stream().map(c -> name(c.text())).toList();
      long known = names.stream().filter(COLUMNS::contains).distinct().count();
      if (names.contains("mark") || known >= 2) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** What a column is called, without its case, its unit or a colon. */
  static String name(String heading) {
    String plain =
        UNIT.matcher(heading.toLowerCase(Locale.ROOT))
            .replaceFirst("")
            .replaceAll("\\s*:$", "")
            .strip();
    return OTHER.getOrDefault(plain, plain);
  }

  /** The unit after a column's name; empty where there is none. */
  static String unit(String heading) {
    Matcher unit = UNIT.matcher(heading.toLowerCase(Locale.ROOT));
    if (!unit.find()) {
      return "";
    }
    String s = unit.group(1) == null ? unit.group(2) : unit.group(1);
    return List.of("mm", "cm").contains(s) ? " " + s : " in";
  }

  /** Whether a column says nothing of a blank. */
  static boolean note(String name) {
    return NOTES.contains(name);
  }

  /** Whether a row is no blank but a sum, or words between the blanks. */
  static boolean noBlank(List<String> header, List<CsvRows.Cell> row) {
    List<String> given = new ArrayList<>();
    boolean sum = false;
    for (int i = 0; i < row.size(); i++) {
      String text = row.get(i).text();
      if (!text.isEmpty() && i < header.size()) {
        given.add(header.get(i));
      }
      sum |= text.length() <= 60 && SUM.matcher(text).matches();
    }
    long sizes = given.stream().filter(SIZES::contains).count();
    return sum && sizes < 2 || sizes == 0 && !given.contains("mark");
  }

  /**
   * A length as a spreadsheet has it: with a hyphen before the fraction, or a decimal comma. In
   * millimetres three figures after a comma may be thousands, so they are left for the reader.
   */
  static String length(String text, String unit, boolean inches) {
    String s = text.replaceAll("^([0-9]+)\\s*[-–]\\s*([0-9]+\\s*/\\s*[0-9]+)", "$1 $2");
    if (!s.matches("[0-9]+,[0-9]{3}([^0-9].*)?") || inches) {
      s = s.replaceAll("^([0-9]+),([0-9]+)", "$1.$2");
    }
    return s.matches("[0-9 ./¼½¾⅛⅜⅝⅞]+") ? s + unit : s;
  }
}
