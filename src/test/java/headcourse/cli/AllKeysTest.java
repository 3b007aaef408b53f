package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.yaml.KeyMeanings;
import headcourse.job.yaml.KeyTable;
import headcourse.job.yaml.KeyTable.Kind;
import headcourse.job.yaml.KeyTable.Place;
import headcourse.job.yaml.KeyTable.Value;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The README's table of all keys is what the readers ask for. With {@code
 * -Dheadcourse.refresh=true} it is written anew.
 */
class AllKeysTest {
  private static final Set<String> ELSEWHERE =
      Set.of("limits", "openings[].vary", "openings[].chosen");

  private static final Path README = Path.of("README.md");
  private static final String START =
      "| key | what stands there | what it means |\n| --- | --- | --- |\n";

  @Test
  void theTableInTheReadmeIsTheReaders() throws IOException {
    String text = Files.readString(README);
    int from = text.indexOf(START);
    assertTrue(from >= 0, "no table of keys in the README");
    int to = text.indexOf("\n\n", from) + 1;
    String table = table();
    if (Boolean.getBoolean("headcourse.refresh")) {
      Files.writeString(README, text.substring(0, from) + table + text.substring(to));
      return;
    }
    assertEquals(table, text.substring(from, to));
  }

  private static String table() {
    StringBuilder table = new StringBuilder(START);
    walk(KeyTable.of(Shapes.definitions(), RuleBook.limits()), "", table);
    return table.toString();
  }

  private static void walk(KeyTable keys, String path, StringBuilder table) {
    for (String key : keys.under(path)) {
      String here = path.isEmpty() ? key : path + "." + key;
      String shown = here.replace("[]", "").replace(".", ": ");
      Set<String> said = new LinkedHashSet<>();
      for (String p : List.of(here, here + "[]")) {
        Place place = keys.places().get(p);
        if (place != null) {
          place.values().forEach(v -> said.add(said(v)));
        }
      }
      if (keys.places().get(here).kinds().contains(Kind.LIST)) {
        said.add("a list");
      }
      table.append("| `").append(shown).append("` | ").append(String.join(", or ", said));
      table.append(" | ").append(meaning(here)).append(" |\n");
      // Thresholds are listed by "headcourse rules"; what may vary is any of these keys.
      if (!ELSEWHERE.contains(here)) {
        walk(keys, here, table);
        walk(keys, here + "[]", table);
      }
    }
  }

  private static final KeyMeanings MEANINGS =
      KeyMeanings.of(Shapes.definitions(), RuleBook.limits());

  private static String meaning(String path) {
    String meaning = MEANINGS.of(path);
    // What only holds others together needs no words.
    assertTrue(!meaning.isEmpty() || path.endsWith(".*"), path + " has no meaning");
    return meaning.replace("|", "\\|");
  }

  /** No words are left of a key that is gone. */
  @Test
  void everyMeaningIsOfAKey() throws IOException {
    Set<String> paths =
        KeyTable.of(Shapes.definitions(), RuleBook.limits()).places().keySet().stream()
            .map(p -> p.replace("[]", ""))
            .collect(Collectors.toSet());
    Properties words = new Properties();
    words.load(Files.newBufferedReader(Path.of("src/main/resources/headcourse/keys.properties")));
    for (Object path : words.keySet()) {
      assertTrue(paths.contains(path), path + " is no key");
    }
  }

  private static String said(Value v) {
    return switch (v.form()) {
      case LENGTH -> "a length";
      case ANGLE -> "an angle";
      case NUMBER -> "a number";
      case WHOLE -> "a whole number";
      case TEXT -> "a text";
      case WORD -> words(v.words());
      case OTHER -> v.expected();
    };
  }

  private static String words(List<String> words) {
    return words.stream().map(w -> "`" + w + "`").collect(Collectors.joining(" "));
  }
}
