package headcourse.text;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The languages that sheets can be printed in. Each is a folder of words, {@code
 * headcourse/words/<tag>}, and a line with its BCP 47 tag in a file {@code
 * headcourse/words/languages}; every such file on the class path counts.
 */
public final class Languages {
  private static final List<String> TAGS = read();

  private Languages() {}

  /** Tags of all languages, ours first. */
  public static List<String> tags() {
    return TAGS;
  }

  /** What a job may say: one language, or two with {@code +} between, the first of them first. */
  public static List<String> choices() {
    List<String> all = new ArrayList<>(TAGS);
    for (String first : TAGS) {
      TAGS.stream().filter(t -> !t.equals(first)).forEach(t -> all.add(first + "+" + t));
    }
    return all;
  }

  private static List<String> read() {
    List<String> tags = new ArrayList<>();
    try {
      for (URL list :
          Collections.list(
              Languages.class.getClassLoader().getResources("headcourse/words/languages"))) {
        try (BufferedReader in =
            new BufferedReader(new InputStreamReader(list.openStream(), StandardCharsets.UTF_8))) {
          in.lines()
              .map(String::strip)
              .filter(t -> !t.isEmpty() && !t.startsWith("#") && !tags.contains(t))
              .forEach(tags::add);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    // English leads whatever the order of the class path.
    tags.sort((a, b) -> Boolean.compare(b.equals("en"), a.equals("en")));
    return List.copyOf(tags);
  }
}
