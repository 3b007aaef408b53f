package headcourse.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.Yaml;

/**
 * A fault to be planted.
 *
 * @param name what it does to a sheet
 * @param file under {@code src/main}
 * @param text what stands there, once
 * @param instead what is written in its place
 */
record Fault(String name, String file, String text, String instead) {
  private static final Path SOURCES = Path.of("src/main");

  /** Those of {@code faults.yaml}. */
  static List<Fault> all() throws IOException {
    Path file = Path.of("src/test/resources/headcourse/faults/faults.yaml");
    List<Map<String, String>> list = new Yaml().load(Files.readString(file));
    return list.stream()
        .map(m -> new Fault(m.get("name"), m.get("file"), m.get("text"), m.get("instead")))
        .toList();
  }

  /** The file as it would be; empty where the text does not stand there, or more than once. */
  String planted() throws IOException {
    String before = Files.readString(SOURCES.resolve(file));
    int at = before.indexOf(text);
    return at < 0 || before.indexOf(text, at + 1) >= 0
        ? ""
        : before.substring(0, at) + instead + before.substring(at + text.length());
  }

  /** Where it lies among the sources, or among the classes for a resource. */
  Path place() {
    return Path.of(file).subpath(1, Path.of(file).getNameCount());
  }

  boolean resource() {
    return file.startsWith("resources/");
  }
}
