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
      cell(cells.get(i));
    }
    out.append("\r\n");
  }

  private void cell(String s) {
    if (quoted(s)) {
      out.append('"').append(s.replace("\"", "\"\"")).append('"');
    } else {
      out.append(s);
    }
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

  @Override
  public String toString() {
    return out.toString();
  }
}
