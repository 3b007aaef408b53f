package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * The job file's JSON Schema against every good and bad example, by an independent validator with a
 * YAML 1.2 parser of its own, so that what an editor underlines is what the program refuses.
 */
class JobSchemaTest {
  private static final Path CASES = Path.of("src/test/resources/headcourse/job-cases");
  private static final Path SLIPS = Path.of("src/test/resources/headcourse/slips/slips.txt");
  private static final Path NEW = Path.of("src/main/resources/headcourse/new-job.yaml");

  /** Wrong by figures, by other values or by other files, which a schema does not weigh. */
  private static final List<String> ONLY_THE_READER =
      List.of(
          "a column with a hundred wrong cells",
          "a decimal comma in a sheet that commas part",
          "a key wider than the opening",
          "a key wider than the opening, both widths given",
          "a one-foot opening",
          "bad-cells",
          "bad-column",
          "bad-comma",
          "bad-fitted",
          "bad-grid",
          "bad-levels",
          "bad-sheet",
          "inches where the job says millimetres",
          "more inches than a foot has",
          "neighbours that must differ by more than they may",
          "no mark above a hundred rows",
          "one unknown name above a hundred rows",
          "one wrong name above a hundred rows",
          "widths stone by stone for an arch");

  @TempDir Path folder;

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(SchemaCommand.text());

  /** What is wrong with a file; a text that is no YAML is one thing. */
  private static List<String> wrong(String yaml) {
    try {
      return SCHEMA.validate(yaml, InputFormat.YAML).stream()
          .map(e -> e.getInstanceLocation() + " " + e.getMessage())
          .toList();
    } catch (RuntimeException e) {
      return List.of("no YAML");
    }
  }

  private static Map<String, String> cases(boolean good) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> files = Files.list(CASES)) {
      for (Path p : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
        String stem = p.getFileName().toString().replace(".yaml", "");
        if (Files.readString(CASES.resolve(stem + ".txt")).isEmpty() == good) {
          found.put(stem, Files.readString(p));
        }
      }
    }
    for (String c : Files.readString(SLIPS).split("(?m)^=== ")) {
      int answer = c.indexOf("\n>>>\n") + 1;
      if (answer > 0 && c.substring(answer + 4).strip().equals("accepted") == good) {
        int name = c.indexOf('\n');
        String file = c.substring(name + 1, answer).split("(?m)^--- ")[0];
        found.put(c.substring(0, name), file);
      }
    }
    return found;
  }

  /** An editor shows it beside the key; by another reader of JSON than our own writer. */
  @Test
  void everyKeyIsDescribed() {
    List<String> without = new ArrayList<>();
    undescribed(new ObjectMapper().readTree(SchemaCommand.text()), "", without);
    assertEquals(List.of(), without);
  }

  private static void undescribed(JsonNode schema, String path, List<String> without) {
    schema
        .path("properties")
        .properties()
        .forEach(
            e -> {
              String here = path + "/" + e.getKey();
              if (e.getValue().path("description").asString("").isEmpty()) {
                without.add(here);
              }
              undescribed(e.getValue(), here, without);
            });
    schema.path("anyOf").forEach(s -> undescribed(s, path, without));
    undescribedIn(schema.path("items"), path + "[]", without);
    undescribedIn(schema.path("additionalProperties"), path + "/*", without);
  }

  private static void undescribedIn(JsonNode schema, String path, List<String> without) {
    if (schema.isObject()) {
      undescribed(schema, path, without);
    }
  }

  @Test
  void everyGoodExampleIsGood() throws IOException {
    Map<String, String> good = cases(true);
    good.put("new", Files.readString(NEW));
    try (Stream<Path> jobs = Files.list(Path.of("jobs"))) {
      for (Path p : jobs.filter(f -> f.toString().endsWith(".yaml")).toList()) {
        good.put(p.toString(), Files.readString(p));
      }
    }
    assertTrue(good.size() >= 20, () -> good.keySet().toString());
    good.forEach((name, text) -> assertEquals(List.of(), wrong(text), name));
  }

  @Test
  void everyBadExampleIsBadOrSaidToBeForTheReaderAlone() throws IOException {
    List<String> passed = new ArrayList<>();
    cases(false)
        .forEach(
            (name, text) -> {
              if (wrong(text).isEmpty()) {
                passed.add(name);
              }
            });
    assertEquals(ONLY_THE_READER, passed);
  }

  /** A key taken out of the reader, or added, is so in the schema: nothing is written twice. */
  @Test
  void knowsTheKeysOfEveryPlace() {
    String head = "stone: {thickness: 1}\nopenings: [{width: 90, head: {";
    assertEquals(List.of(), wrong(head + "shape: segmental, rise: 12, extrados: level}}]\n"));
    assertEquals(List.of(), wrong(head + "key: none, bearing: {min: 2}}}]\n"));
    assertFalse(wrong(head + "shape: segmental, rice: 12}}]\n").isEmpty());
    assertFalse(wrong(head + "key: {bottom: -2}}}]\n").isEmpty());
    assertFalse(wrong("stone: {thickness: 1}\n").isEmpty());
    assertFalse(wrong("openings: [{width: 90}]\n").isEmpty());
    assertFalse(wrong("stone: {thickness: 1}\nopenings: {width: 90}\n").isEmpty());
    assertEquals(
        List.of(),
        wrong(
            "stone: {thickness: 1}\nopenings: [{width: 90}]\n"
                + "fitted: {D1: {L1: 6, R1: {bottom: 7, top: 6}}}\nspoiled: [D1-R5]\n"
                + "cut: [D1-R4, {stone: D1-R6, piece: C1#2}]\nlimits: {edition: 2022}\n"));
  }

  @Test
  void aNewJobNamesTheSchemaThatIsWrittenBesideIt() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
    assertEquals(0, Main.run(List.of("new", "jobs/barn.yaml"), folder, to, to));
    String first = Files.readAllLines(folder.resolve("jobs/barn.yaml")).get(0);
    assertEquals("# yaml-language-server: $schema=headcourse.schema.json", first);
    Path schema = folder.resolve("jobs/headcourse.schema.json");
    assertEquals(SchemaCommand.text(), Files.readString(schema));
    // An older one of ours is renewed, another's file is not touched.
    Files.writeString(schema, SchemaCommand.text().replace("\"title\"", "\"titel\""));
    assertEquals(0, Main.run(List.of("new", "jobs/shed.yaml"), folder, to, to));
    assertEquals(SchemaCommand.text(), Files.readString(schema));
    Files.writeString(schema, "{}");
    assertEquals(0, Main.run(List.of("new", "jobs/byre.yaml"), folder, to, to));
    assertEquals("{}", Files.readString(schema));
    out.reset();
    assertEquals(0, Main.run(List.of("schema"), folder, to, to));
    assertEquals(SchemaCommand.text(), out.toString(StandardCharsets.UTF_8).replace("\r\n", "\n"));
  }
}
