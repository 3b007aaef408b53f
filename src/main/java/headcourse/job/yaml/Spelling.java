package headcourse.job.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Other ways to write the words that a job knows, where there is no doubt what is meant. */
final class Spelling {
  private static final Map<String, String> OTHER =
      Map.ofEntries(
          Map.entry("inch", "in"),
          Map.entry("inches", "in"),
          Map.entry("millimetre", "mm"),
          Map.entry("millimetres", "mm"),
          Map.entry("millimeter", "mm"),
          Map.entry("millimeters", "mm"),
          Map.entry("dry-stacked", "dry"),
          Map.entry("dry-stack", "dry"),
          Map.entry("dry-laid", "dry"),
          Map.entry("mortared", "mortar"),
          Map.entry("english", "en"),
          Map.entry("spanish", "es"),
          Map.entry("yes", "true"),
          Map.entry("no", "false"),
          Map.entry("three-centered", "three-centred"),
          Map.entry("four-centered", "four-centred"),
          Map.entry("mitered", "mitred"));

  private Spelling() {}

  /** The words, and all that is read as one of them but for its case. */
  static List<String> also(List<String> words) {
    List<String> all = new ArrayList<>(words);
    OTHER.keySet().stream().sorted().filter(k -> words.contains(OTHER.get(k))).forEach(all::add);
    return all;
  }

  /** The word that is meant, where there is one: its case, and blanks for hyphens, don't count. */
  static Optional<String> of(String text, List<String> words) {
    if (words.contains(text)) {
      return Optional.of(text);
    }
    String plain = text.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    for (String w : words) {
      if (w.toLowerCase(Locale.ROOT).equals(plain)) {
        return Optional.of(w);
      }
    }
    return Optional.ofNullable(OTHER.get(plain)).filter(words::contains);
  }
}
