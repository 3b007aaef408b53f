package headcourse.export;

import java.util.List;

/** Writes comma-separated values after RFC 4180. */
final class CsvWriter {
  private final StringBuilder out = new StringBuilder();

  void row(List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      if (i > 0) {
        out.append(',');
      }
      out.append(cell(cells.get(i)));
    }
    out.append("\r\n");
  }

  private static String cell(String s) {
    boolean quoted = s.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return quoted ? '"' + s.replace("\"", "\"\"") + '"' : s;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
