package headcourse.export;

import headcourse.job.yaml.KeyMeanings;
import headcourse.job.yaml.KeyTable;
import headcourse.job.yaml.KeyTable.Form;
import headcourse.job.yaml.KeyTable.Kind;
import headcourse.job.yaml.KeyTable.Place;
import headcourse.job.yaml.KeyTable.Value;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The job file's JSON Schema (draft 2020-12), for editors that complete and check while one types.
 * It knows keys, kinds of values, words and signs; what hangs on other values only the reader
 * knows.
 */
public final class JobSchema {
  /** By which a file of it is known as ours. */
  public static final String ID = "urn:headcourse:job";

  /** What a number begins with, however it is typed. */
  private static final String DIGITS = "[0-9.½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹]";

  private static final String MINUS = "[-−–‐‑]";

  private final KeyTable table;
  private final KeyMeanings meanings;
  private final JsonWriter json = new JsonWriter();

  private JobSchema(KeyTable table, KeyMeanings meanings) {
    this.table = table;
    this.meanings = meanings;
  }

  /** The schema, with a last line end. */
  public static String write(KeyTable table, KeyMeanings meanings) {
    JobSchema s = new JobSchema(table, meanings);
    s.json.object();
    s.json.key("$schema").value("https://json-schema.org/draft/2020-12/schema");
    s.json.key("$id").value(ID);
    s.json.key("title").value("A headcourse job: heads of thin stone over openings");
    s.keys("");
    s.definitions();
    s.json.end();
    String text = s.json.toString();
    return text.endsWith("\n") ? text : text + "\n";
  }

  private void definitions() {
    json.key("$defs").object();
    // Bare numbers are in the job's units; others carry their own.
    number("length", "number", "^\\s*(\\+|" + MINUS + ")?\\s*" + DIGITS + "[^:;=#,]*$");
    number("size", "number", "^\\s*\\+?\\s*" + DIGITS + "[^:;=#,]*$");
    number("angle", "number", "^\\s*(\\+|" + MINUS + ")?\\s*" + DIGITS + ".*$");
    number("number", "number", "^\\s*[+-]?\\s*[0-9./ ½⅓⅔¼¾⅛⅜⅝⅞-]+$");
    json.key("text").object();
    types("string", "number", "boolean", "null");
    json.key("maxLength").value(2000);
    json.end();
    json.key("value").object();
    types("string", "number", "boolean", "null");
    json.end();
    json.end();
  }

  private void number(String name, String type, String pattern) {
    json.key(name).object();
    types(type, "string");
    json.key("pattern").value(pattern);
    json.end();
  }

  private void types(String... names) {
    json.key("type").flatArray();
    for (String n : names) {
      json.value(n);
    }
    json.endFlat();
  }

  /** The keys of a mapping, within an object that is open. */
  private void keys(String path) {
    json.key("type").value("object");
    List<String> under = table.under(path);
    if (under.isEmpty()) {
      return;
    }
    json.key("properties").object();
    List<String> needed = new ArrayList<>();
    for (String key : under) {
      String at = path.isEmpty() ? key : path + "." + key;
      if (!key.equals("*")) {
        json.key(key);
        place(at);
        if (table.places().get(at).needed()) {
          needed.add(key);
        }
      }
    }
    json.end();
    json.key("additionalProperties");
    if (under.contains("*")) {
      place(path.isEmpty() ? "*" : path + ".*");
    } else {
      json.value(false);
    }
    if (path.isEmpty()) {
      // The thickness below the one must be there, and there are no heads without the other.
      needed.addAll(List.of("stone", "openings"));
    }
    if (!needed.isEmpty()) {
      json.key("required").flatArray();
      needed.forEach(json::value);
      json.endFlat();
    }
  }

  private void place(String path) {
    Place place = table.places().get(path);
    List<Runnable> ways = new ArrayList<>();
    if (place.kinds().contains(Kind.VALUE)) {
      place.values().forEach(v -> ways.add(() -> value(v)));
    }
    if (place.kinds().contains(Kind.LIST)) {
      ways.add(() -> list(path));
    }
    if (place.kinds().contains(Kind.KEYS)) {
      ways.add(() -> keys(path));
    }
    json.object();
    String meaning = path.endsWith("]") ? "" : meanings.of(path);
    // A value of its own kind says itself what is expected; two descriptions can't stand together.
    boolean own = place.values().stream().anyMatch(v -> !v.expected().isEmpty());
    if (!meaning.isEmpty()) {
      json.key("description").value(meaning);
    }
    if (ways.size() == 1 && (!own || meaning.isEmpty())) {
      ways.get(0).run();
    } else if (!ways.isEmpty()) {
      json.key("anyOf").array();
      for (Runnable way : ways) {
        json.object();
        way.run();
        json.end();
      }
      json.endArray();
    }
    json.end();
  }

  private void list(String path) {
    json.key("type").value("array");
    if (table.places().containsKey(path + "[]")) {
      json.key("items");
      place(path + "[]");
    }
  }

  private void value(Value v) {
    switch (v.form()) {
      case LENGTH -> {
        boolean signed = v.min() < 0;
        json.key("$ref").value(signed ? "#/$defs/length" : "#/$defs/size");
        if (!signed) {
          json.key(v.min() > 0 ? "exclusiveMinimum" : "minimum").value(0);
        }
      }
      case ANGLE -> json.key("$ref").value("#/$defs/angle");
      case NUMBER -> {
        json.key("$ref").value("#/$defs/number");
        json.key("minimum").value(v.min());
        json.key("maximum").value(v.max());
      }
      case WHOLE -> {
        json.key("type").value("integer");
        json.key("minimum").value((long) v.min());
        json.key("maximum").value((long) v.max());
      }
      case WORD -> words(v.words());
      case TEXT -> json.key("$ref").value("#/$defs/text");
      case OTHER -> {
        json.key("$ref").value("#/$defs/value");
        if (!v.expected().isEmpty()) {
          json.key("description").value(v.expected());
        }
      }
      default -> throw new IllegalStateException(Form.class.getName());
    }
  }

  /** The words as they are offered, and the other ways to write them. */
  private void words(List<String> words) {
    json.key("anyOf").array().object().key("enum").flatArray();
    for (String w : words) {
      if (w.equals("true") || w.equals("false")) {
        json.value(Boolean.parseBoolean(w));
      } else if (w.matches("[0-9]{1,9}")) {
        json.value(Long.parseLong(w));
      } else {
        json.value(w);
      }
    }
    json.endFlat().end().object();
    Set<String> patterns = new LinkedHashSet<>();
    for (String w : KeyTable.spellings(words)) {
      StringBuilder p = new StringBuilder();
      for (char c : w.toCharArray()) {
        String upper = String.valueOf(c).toUpperCase(Locale.ROOT);
        p.append(
            Character.isLetter(c)
                ? "[" + c + upper + "]"
                : c == '-' ? "[-_ ]" : c == '+' ? "\\+" : String.valueOf(c));
      }
      patterns.add(p.toString());
    }
    json.key("type").value("string");
    json.key("pattern").value("^(" + String.join("|", patterns) + ")$");
    json.end().endArray();
  }
}
