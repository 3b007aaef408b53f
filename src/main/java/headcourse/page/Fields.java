package headcourse.page;

import headcourse.job.ShapeDef;
import headcourse.job.yaml.JobOutline;
import headcourse.job.yaml.KeyTable;
import headcourse.layout.shapes.Shapes;
import headcourse.sheet.form.FormField;
import headcourse.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The fields of the page: those of the measuring sheet in its order, then the head's as the
 * readers' own table has them. Words to choose from come from that table too.
 */
final class Fields {
  private static final String OPENING = "openings[].";
  private static final String HEAD = OPENING + "head.";

  /** The key stone, which a head can be without. */
  private static final String KEY = "key";

  /** Keys of any head, in the order in which they are thought of. */
  private static final List<String> HEADS =
      List.of(
          "shape",
          "height",
          KEY,
          "key.bottom",
          "key.top",
          "key.rise",
          "key.drop",
          "key.proud",
          "stones.target",
          "stones.min",
          "stones.max",
          "stones.each-side",
          "stones.rhythm",
          "bearing.target",
          "bearing.min",
          "bearing.max",
          "clear",
          "soffit");

  private final KeyTable table;
  private final Words words;

  Fields(KeyTable table, Words words) {
    this.table = table;
    this.words = words;
  }

  /** All fields by their group; groups in the order of the page. */
  Map<String, List<Field>> of(JobOutline outline, int opening) {
    Map<String, List<Field>> groups = new LinkedHashMap<>();
    for (FormField f : FormField.ALL) {
      if (!f.path().isEmpty()) {
        String path = f.path().replace("[0]", "[]");
        Field field =
            new Field(path, f.name(), words.say("form." + f.words()), f.place(), words(path));
        groups.computeIfAbsent(group(path), g -> new ArrayList<>()).add(field);
      }
    }
    groups.put("head", head(outline, opening));
    groups.put("setting", List.of(own("setting.", "joints"), own("setting.", "joint")));
    return groups;
  }

  /** Whether the page has a field for a path. */
  boolean have(JobOutline outline, int opening, String path) {
    return of(outline, opening).values().stream()
        .flatMap(List::stream)
        .anyMatch(f -> f.path(opening).equals(path));
  }

  private static String group(String path) {
    if (path.startsWith(OPENING + "measured.")) {
      return "measured";
    }
    return path.startsWith(OPENING)
        ? "opening"
        : path.startsWith("stone.") || path.startsWith("wall.") ? "wall" : "job";
  }

  private List<Field> head(JobOutline outline, int opening) {
    String at = "openings[" + opening + "].head";
    List<String> keys = new ArrayList<>(HEADS);
    String shape = outline.value(at + ".shape").orElse("soldier");
    Shapes.definitions().stream()
        .filter(d -> d.name().equals(shape))
        .flatMap(d -> d.params().stream())
        .map(ShapeDef.ParamDef::name)
        .filter(k -> !keys.contains(k))
        .forEach(keys::add);
    // What the file has besides, so that nothing it says of the head is hidden.
    for (String key : outline.keys(at)) {
      List<String> inner = outline.keys(at + "." + key);
      List<String> all =
          inner.isEmpty() ? List.of(key) : inner.stream().map(k -> key + "." + k).toList();
      all.stream().filter(k -> !keys.contains(k)).forEach(keys::add);
    }
    return keys.stream().map(k -> own(HEAD, k)).toList();
  }

  private Field own(String in, String key) {
    String name = key.replace(".", ": ");
    String about = words.sayOr("page.about-" + key.replace('.', '-'), "");
    List<String> choice = key.equals(KEY) ? List.of("none") : words(in + key);
    return new Field(in + key, name, about, 0, choice);
  }

  private List<String> words(String path) {
    KeyTable.Place place = table.places().get(path);
    return place == null
        ? List.of()
        : place.values().stream()
            .filter(v -> v.form() == KeyTable.Form.WORD)
            .findFirst()
            .filter(v -> place.values().size() == 1)
            .map(KeyTable.Value::words)
            .orElse(List.of());
  }
}
