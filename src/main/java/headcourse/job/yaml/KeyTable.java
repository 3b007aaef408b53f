package headcourse.job.yaml;

import headcourse.job.ShapeDef;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Every key of a job file with what may stand there, as the readers themselves ask for it: nothing
 * is written down a second time.
 *
 * @param places by path, in the order in which they are read; {@code []} is an item of a list,
 *     {@code *} a mark that the user gives
 */
public record KeyTable(Map<String, Place> places) {
  /** Enough for each word and each kind of value to have its turn. */
  private static final int ROUNDS = 96;

  /** What can stand at a place. */
  public enum Kind {
    /** One value. */
    VALUE,
    /** Keys with values. */
    KEYS,
    /** A list. */
    LIST
  }

  /** How a value is read. */
  public enum Form {
    /** A length. */
    LENGTH,
    /** An angle or a rate. */
    ANGLE,
    /** A number. */
    NUMBER,
    /** A whole number. */
    WHOLE,
    /** One of some words. */
    WORD,
    /** Any text. */
    TEXT,
    /** Something of its own, which is read by the reader of the key alone. */
    OTHER
  }

  /**
   * What one value may be.
   *
   * @param min least; of a length in millimetres
   * @param max greatest, likewise
   * @param words of a word; else empty
   * @param expected what a message would say is expected; may be empty
   */
  public record Value(Form form, double min, double max, List<String> words, String expected) {
    static Value of(Form form, String expected) {
      return new Value(form, 0, 0, List.of(), expected);
    }

    static Value word(List<String> words) {
      return new Value(Form.WORD, 0, 0, List.copyOf(words), "");
    }

    static Value length(Length min, Length max) {
      return new Value(Form.LENGTH, min.mm(), max.mm(), List.of(), "");
    }

    static Value number(Form form, double min, double max) {
      return new Value(form, min, max, List.of(), "");
    }
  }

  /**
   * One place.
   *
   * @param kinds what can stand there
   * @param values what one value may be, where one can
   * @param needed whether it must be there
   */
  public record Place(Set<Kind> kinds, List<Value> values, boolean needed) {}

  /** The table of the program, with the shapes and thresholds that it has. */
  public static KeyTable of(List<ShapeDef> shapes, List<ShapeDef.ParamDef> limits) {
    Asked asked = new Asked();
    for (int i = 0; i < ROUNDS; i++) {
      asked.round(i);
      JobText text = new JobText("", "\n");
      JobSource source = new JobSource("", text, shapes, limits, path -> Optional.empty());
      JobReader.ask(source, asked);
    }
    Map<String, Place> places = new LinkedHashMap<>();
    asked
        .places()
        .forEach(
            (path, p) -> {
              boolean needed = p.needed > 0 && p.needed == opened(asked, path);
              Place own = new Place(Set.copyOf(p.kinds), List.copyOf(p.values), needed);
              places.merge(general(path), own, KeyTable::both);
            });
    return new KeyTable(places);
  }

  /** How often the keys around one were asked for. */
  private static int opened(Asked asked, String path) {
    int dot = path.lastIndexOf('.');
    return dot < 0 ? 0 : asked.places().get(path.substring(0, dot)).opened;
  }

  private static Place both(Place a, Place b) {
    Set<Kind> kinds = new LinkedHashSet<>(a.kinds());
    kinds.addAll(b.kinds());
    Set<Value> values = new LinkedHashSet<>(a.values());
    values.addAll(b.values());
    return new Place(kinds, List.copyOf(values), a.needed() && b.needed());
  }

  private static String general(String path) {
    return path.replace("[0]", "[]")
        .replaceAll("^(fitted|answers\\.openings|cut)\\." + Asked.MARK, "$1.*")
        .replace("." + Asked.STONE, ".*");
  }

  /** Other ways to write some words, themselves first. */
  public static List<String> spellings(List<String> words) {
    return Spelling.also(words);
  }

  /** Where a key belongs that was written in another place, in words; empty where nowhere. */
  List<String> elsewhere(String key) {
    String end = "." + key;
    List<String> found =
        places.keySet().stream()
            .filter(p -> p.endsWith(end) || p.equals(key))
            .map(p -> p.equals(key) ? "" : p.substring(0, p.length() - key.length() - 1))
            .filter(p -> !p.contains("*") && !p.startsWith("openings[].vary"))
            .limit(3)
            .toList();
    if (found.isEmpty()) {
      return List.of();
    }
    String under =
        String.join(
            " or ",
            found.stream()
                .map(
                    p ->
                        p.isEmpty()
                            ? "by itself, at the left edge"
                            : p.equals("openings[]")
                                ? "under an opening"
                                : "under " + p.replace("openings[].", "") + ":")
                .toList());
    return List.of(key + ": stands " + under);
  }

  /** The keys directly under a place, in their order. */
  public List<String> under(String path) {
    String start = path.isEmpty() ? "" : path + ".";
    List<String> keys = new ArrayList<>();
    for (String p : places.keySet()) {
      if (p.startsWith(start) && p.length() > start.length()) {
        String rest = p.substring(start.length());
        if (rest.indexOf('.') < 0 && !rest.endsWith("]")) {
          keys.add(rest);
        }
      }
    }
    return keys;
  }
}
