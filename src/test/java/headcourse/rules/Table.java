package headcourse.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A data file of values from outside: one row a check, columns by semicolons, a header first. */
final class Table {
  private Table() {}

  static List<List<String>> of(String name) {
    try (InputStream in = Table.class.getResourceAsStream("/headcourse/checks/" + name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<List<String>> rows = text.lines().map(l -> List.of(l.split(";", -1))).toList();
      int columns = rows.get(0).size();
      for (List<String> row : rows) {
        if (row.size() != columns || row.get(columns - 1).isBlank()) {
          throw new IllegalArgumentException(name + ": " + row);
        }
      }
      return rows.subList(1, rows.size());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
