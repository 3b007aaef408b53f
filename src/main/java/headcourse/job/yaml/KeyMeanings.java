package headcourse.job.yaml;

import headcourse.job.ShapeDef;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;

/**
 * What each key of a job file means, in a few words, for editors and for the table of all keys.
 * Keys of shapes and thresholds bring theirs along; all others stand in {@code keys.properties}.
 */
public final class KeyMeanings {
  private final Properties words = new Properties();

  private KeyMeanings() {}

  /** Those of the program, with the shapes and thresholds that it has. */
  public static KeyMeanings of(List<ShapeDef> shapes, List<ShapeDef.ParamDef> limits) {
    KeyMeanings m = new KeyMeanings();
    try (InputStreamReader in =
        new InputStreamReader(
            KeyMeanings.class.getResourceAsStream("/headcourse/keys.properties"),
            StandardCharsets.UTF_8)) {
      m.words.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    for (ShapeDef shape : shapes) {
      for (ShapeDef.ParamDef p : shape.params()) {
        m.words.putIfAbsent("openings.head." + p.name(), p.help());
        m.words.putIfAbsent("openings.vary." + p.name(), "to try: " + p.help());
      }
    }
    limits.forEach(p -> m.words.putIfAbsent("limits." + p.name(), p.help()));
    return m;
  }

  /** The meaning of the key at a path of {@link KeyTable}; empty where none is given. */
  public String of(String path) {
    String plain = path.replace("[]", "").replace("answers.openings.*.", "answers.");
    return words.getProperty(plain, "");
  }
}
