package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.cli.Arguments.Output;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Bundle;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.book.SheetBook;
import headcourse.testing.JobText;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No key of a job file is read and then forgotten: a change of each is seen on a page, in a file,
 * or in what is said. The reader itself names the keys: a strange key in a mapping is answered with
 * those that it knows. Values to try stand in {@code keys/keys.tsv}.
 */
class EveryKeyActsTest {
  private static final Path KEYS = Path.of("src/test/resources/headcourse/keys");
  private static final String STRANGE = "zzz";
  private static final Pattern ANSWER =
      Pattern.compile("unknown key .?" + STRANGE + ".? in (.*); expected (.*?)(;.*)?");

  /** Mappings whose keys are marks of the job's own stones or openings, not the program's. */
  private static final Pattern OWN = Pattern.compile("fitted|fitted\\.[A-Z0-9]+");

  /** Held by tests of their own: what can be chosen, a picture made of an SVG, full size. */
  private static final List<String> ELSEWHERE =
      List.of(
          "openings.vary", "openings.choose", "openings.chosen", "pictures", "full-size", "shop");

  private static final Set<Output> SHORT = EnumSet.of(Output.JSON, Output.CSV);
  private static final Set<Output> PICTURES = EnumSet.of(Output.SVG);

  @TempDir Path folder;

  private record Row(String base, String path, String value, boolean refused) {
    /** The key without places in lists; those of a head with its shape. */
    String key() {
      return path.replaceAll("\\[\\d+]", "");
    }
  }

  private static List<Row> rows() throws IOException {
    return Files.readAllLines(KEYS.resolve("keys.tsv")).stream()
        .filter(
            l -> !l.isBlank() && !l.startsWith("#") && l.contains(System.getProperty("only", "")))
        .map(l -> l.split("\t"))
        .map(p -> new Row(p[0], p[1], p[2], p.length > 3))
        .toList();
  }

  private static String base(String name) throws IOException {
    return Files.readString(KEYS.resolve(name + ".yaml"));
  }

  private Outcome<Job> read(String text) throws IOException {
    Files.writeString(folder.resolve("a.yaml"), text);
    return new JobFile(folder, "a.yaml").read();
  }

  /** What a job says, a part at a time: what is cheap first. */
  private final class Said {
    private final List<Supplier<String>> parts = new ArrayList<>();
    private final Map<Integer, String> made = new TreeMap<>();

    private Said(String text) throws IOException {
      Outcome<Job> read = read(text);
      JobFile file = new JobFile(folder, "a.yaml");
      Outcome<ShopWork> work =
          read.value()
              .map(job -> WorkUp.of(job, file::beside))
              .orElse(Outcome.failed(read.diagnostics()));
      StringBuilder first = new StringBuilder();
      work.diagnostics().forEach(d -> first.append(said(d)).append('\n'));
      work.value().ifPresent(w -> w.findings().forEach(f -> first.append(f).append('\n')));
      parts.add(first::toString);
      Outcome<SheetFrame> framed =
          read.value().map(job -> Frames.of(job, file)).orElse(Outcome.failed(List.of()));
      framed.diagnostics().forEach(d -> first.append(said(d)).append('\n'));
      if (work.value().isPresent() && framed.value().isPresent()) {
        ShopWork done = work.value().get();
        SheetFrame frame = framed.value().get();
        parts.add(() -> files(done, frame, SHORT::contains));
        for (Bundle b : Bundle.values()) {
          parts.add(() -> MarkLines.of(SheetBook.compose(done, b, frame)).toString());
        }
        parts.add(() -> files(done, frame, PICTURES::contains));
      }
    }

    private String part(int number) {
      return made.computeIfAbsent(number, n -> parts.get(n).get());
    }

    private boolean refused() {
      return parts.size() == 1;
    }

    private boolean sameAs(Said other) {
      if (parts.size() != other.parts.size()) {
        return false;
      }
      for (int i = 0; i < parts.size(); i++) {
        if (!part(i).equals(other.part(i))) {
          return false;
        }
      }
      return true;
    }
  }

  private static String files(ShopWork work, SheetFrame frame, Predicate<Output> wanted) {
    try (Scratch scratch = new Scratch()) {
      ByteArrayOutputStream all = new ByteArrayOutputStream();
      OutputWriter writer = new OutputWriter(work, frame, new byte[0], scratch, n -> {}, n -> {});
      for (var e : writer.print(wanted, "").entrySet()) {
        all.writeBytes(e.getKey().getBytes(StandardCharsets.UTF_8));
        e.getValue().to(Channels.newChannel(all));
      }
      return all.toString(StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String said(Diagnostic d) {
    return d.severity() + " " + d.message();
  }

  @Test
  void everyKeyHasAnEffect() throws IOException {
    Map<String, Said> plain = new TreeMap<>();
    List<String> idle = new ArrayList<>();
    for (Row row : rows()) {
      String base = base(row.base);
      if (!plain.containsKey(row.base)) {
        Said said = new Said(base);
        assertFalse(said.refused(), row.base + " can't be drawn:\n" + said.part(0));
        plain.put(row.base, said);
      }
      Said now = new Said(JobText.with(base, List.of(new Change(row.path, row.value, ""))));
      if (now.refused() && !row.refused && !now.part(0).contains("nowhere.")) {
        idle.add(row + " is refused: " + now.part(0).strip());
      } else if (now.sameAs(plain.get(row.base))) {
        idle.add(row + " changes nothing");
      }
    }
    assertEquals("", String.join("\n", idle));
  }

  @Test
  void everyKeyOfTheReaderIsTried() throws IOException {
    TreeSet<String> known = new TreeSet<>();
    for (String base : List.of("door", "arches", "flats", "pile")) {
      for (String path : mappings(base(base))) {
        String probed = JobText.with(base(base), List.of(new Change(path + STRANGE, "1", "")));
        for (Diagnostic d : read(probed).diagnostics()) {
          Matcher m = ANSWER.matcher(d.message());
          if (m.matches()) {
            for (String key : m.group(2).split(", ")) {
              known.add((path + key).replaceAll("\\[\\d+]", ""));
            }
          }
        }
      }
    }
    assertTrue(known.size() > 100, "too few keys: " + known);
    TreeSet<String> tried = new TreeSet<>();
    for (Row row : rows()) {
      // A mapping is tried by each of its keys.
      for (int i = row.key().indexOf('.'); i >= 0; i = row.key().indexOf('.', i + 1)) {
        tried.add(row.key().substring(0, i));
      }
      tried.add(row.key());
      if (row.value != null && row.value.startsWith("{")) {
        new org.yaml.snakeyaml.Yaml()
            .<Map<String, Object>>load(row.value)
            .keySet()
            .forEach(k -> tried.add(row.key() + "." + k));
      }
    }
    known.removeAll(tried);
    known.removeAll(ELSEWHERE);
    known.removeIf(k -> k.startsWith("openings.vary.") || k.startsWith("openings.chosen."));
    assertEquals("", String.join(" ", known));
  }

  /** Paths of all mappings of a job, each ending in a dot but the outermost. */
  private static List<String> mappings(String text) {
    List<String> found = new ArrayList<>();
    collect(new org.yaml.snakeyaml.Yaml().load(text), "", found);
    return found;
  }

  private static void collect(Object node, String path, List<String> found) {
    if (node instanceof Map<?, ?> map) {
      if (!OWN.matcher(path.replaceAll("\\.$", "")).matches()) {
        found.add(path);
      }
      map.forEach((k, v) -> collect(v, path + k + (v instanceof Map ? "." : ""), found));
    } else if (node instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        Object v = list.get(i);
        collect(v, path + "[" + i + "]" + (v instanceof Map ? "." : ""), found);
      }
    }
  }
}
