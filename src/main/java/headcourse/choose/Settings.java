package headcourse.choose;

import headcourse.job.Change;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The settings of a choice, as the job file has them under {@code chosen:}.
 *
 * @param values by key, as in {@code key.bottom}, {@code stones.widths} or {@code joints}
 */
public record Settings(Map<String, String> values) {
  /** None. */
  static final Settings NONE = new Settings(Map.of());

  /** Copies the map, in the order of its keys. */
  public Settings {
    values = Collections.unmodifiableMap(new TreeMap<>(values));
  }

  /** With one more. */
  Settings with(String key, String value) {
    Map<String, String> more = new TreeMap<>(values);
    more.put(key, value);
    return new Settings(more);
  }

  /** Without those of some keys. */
  Settings without(Predicate<String> keys) {
    Map<String, String> less = new TreeMap<>(values);
    less.keySet().removeIf(keys);
    return new Settings(less);
  }

  /** As one line of a job file: {@code {key: {bottom: 8}, stones: {widths: [14 x 7]}}}. */
  public String text() {
    List<String> parts = new ArrayList<>();
    Map<String, List<String>> inner = new TreeMap<>();
    values.forEach(
        (key, value) -> {
          int dot = key.indexOf('.');
          if (dot < 0) {
            inner.computeIfAbsent(key, k -> new ArrayList<>()).add(quoted(value));
          } else {
            inner
                .computeIfAbsent(key.substring(0, dot), k -> new ArrayList<>())
                .add(key.substring(dot + 1) + ": " + quoted(value));
          }
        });
    inner.forEach(
        (key, list) -> {
          boolean map = values.keySet().stream().anyMatch(k -> k.startsWith(key + "."));
          String joined = String.join(", ", list);
          parts.add(key + ": " + (map ? "{" + joined + "}" : joined));
        });
    return "{" + String.join(", ", parts) + "}";
  }

  /** The changes that lay the settings over an opening's head, by its path in the job. */
  List<Change> changes(String path) {
    return values.isEmpty()
        ? List.of()
        : List.of(
            new Change(path + ".choose", "A", "lays the settings over the head"),
            new Change(path + ".chosen", text(), "sets the head"));
  }

  /** A value that would otherwise end where its comma stands. */
  private static String quoted(String value) {
    boolean collection = value.startsWith("[") || value.startsWith("{");
    boolean plain = value.chars().noneMatch(c -> ",:#[]{}&*!|>%@`\"'".indexOf(c) >= 0);
    return collection || plain ? value : "'" + value.replace("'", "''") + "'";
  }
}
