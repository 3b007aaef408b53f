package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher beside the packaged program, as a user would start it: it keeps an archive of the
 * classes loaded, and never lets it be seen. Run after packaging.
 */
@EnabledOnOs({OS.LINUX, OS.MAC})
class LauncherCheck {
  @TempDir Path folder;
  private Path program;
  private Path cache;

  private record Run(int status, String out, String err) {}

  @BeforeEach
  void installed() throws IOException {
    cache = folder.resolve("cache");
    install("program");
    Files.writeString(
        folder.resolve("a.yaml"),
        """
        units: in
        stone: {density: 138 lb/ft3, thickness: 1 1/4}
        openings: [{mark: D1, width: 4'}]
        """);
  }

  private void install(String name) throws IOException {
    program = Files.createDirectories(folder.resolve(name)).resolve("headcourse");
    Files.copy(Path.of("target", "headcourse"), program);
    Files.copy(Path.of("target", "headcourse.jar"), program.resolveSibling("headcourse.jar"));
    assertTrue(program.toFile().setExecutable(true));
  }

  private Process start(String name, String options, String... args) throws IOException {
    List<String> command = new ArrayList<>(List.of(program.toString()));
    command.addAll(List.of(args));
    ProcessBuilder b =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(folder.resolve(name + ".out").toFile())
            .redirectError(folder.resolve(name + ".err").toFile());
    b.environment().put("XDG_CACHE_HOME", cache.toString());
    b.environment().put("JAVA_HOME", System.getProperty("java.home"));
    b.environment().put("JAVA_OPTS", options);
    return b.start();
  }

  private Run end(Process p, String name) throws IOException, InterruptedException {
    int status = p.waitFor();
    return new Run(
        status,
        Files.readString(folder.resolve(name + ".out")),
        Files.readString(folder.resolve(name + ".err")));
  }

  private Run run(String options, String... args) throws IOException, InterruptedException {
    return end(start("run", options, args), "run");
  }

  private List<Path> kept() throws IOException {
    Path own = cache.resolve("headcourse");
    if (!Files.exists(own)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(own)) {
      return files.sorted().toList();
    }
  }

  @Test
  void laterRunsTakeTheirClassesFromTheArchive() throws Exception {
    Run first = run("", "draw", "a.yaml", "--out", "one");
    assertTrue(first.status <= Main.FINDINGS, first.err);
    assertEquals(1, kept().size(), kept().toString());
    Path list = folder.resolve("classes.txt");
    Run second = run("-Xlog:class+load:file=" + list, "draw", "a.yaml", "--out", "two");
    assertEquals(first.status, second.status);
    assertEquals(first.out.replace("one/", "two/"), second.out);
    assertEquals(first.err.replace("one/", "two/"), second.err);
    List<String> own =
        Files.readAllLines(list).stream()
            // Two threads that make a lambda at once make it twice, and the archive keeps one.
            .filter(l -> l.contains(" headcourse.") && !l.contains("$$Lambda"))
            .toList();
    List<String> loaded = own.stream().filter(l -> !l.contains("shared objects file")).toList();
    assertTrue(own.size() > 300, "" + own.size());
    assertTrue(
        loaded.isEmpty(), loaded.size() + " classes, the first " + loaded.stream().findFirst());
    for (String file : List.of("bench.pdf", "layout.json")) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("one/a/" + file)),
          Files.readAllBytes(folder.resolve("two/a/" + file)),
          file);
    }
  }

  @Test
  void anotherJarGetsAnotherArchive() throws Exception {
    run("", "draw", "a.yaml");
    Path archive = kept().get(0);
    FileTime old = FileTime.from(Instant.parse("2026-01-01T00:00:00Z"));
    Files.setLastModifiedTime(archive, old);
    Run run = run("", "draw", "a.yaml");
    assertTrue(run.status <= Main.FINDINGS, run.err);
    assertEquals(List.of(archive), kept());
    assertTrue(Files.getLastModifiedTime(archive).compareTo(old) > 0, "not made anew");
  }

  @Test
  void twoAtOnceAndNoCacheAtAll() throws Exception {
    Process one = start("one", "", "draw", "a.yaml", "--out", "one");
    Process two = start("two", "", "draw", "a.yaml", "--out", "two");
    assertTrue(end(one, "one").status <= Main.FINDINGS);
    assertTrue(end(two, "two").status <= Main.FINDINGS);
    assertEquals(1, kept().size(), kept().toString());
    cache = Files.writeString(folder.resolve("a-file"), "where the folder should be");
    Run run = run("", "draw", "a.yaml");
    assertTrue(run.status <= Main.FINDINGS, run.err);
    assertTrue(run.out.contains("bench.pdf"), run.out);
  }

  /** Java 17 archives nothing from such a place; all else goes on. */
  @Test
  void namesWithSpacesWork() throws Exception {
    install("my programs");
    assertTrue(run("", "draw", "a.yaml").status <= Main.FINDINGS);
    Run again = run("", "draw", "a.yaml");
    assertTrue(again.status <= Main.FINDINGS && again.out.contains("wall.pdf"), again.err);
  }

  @Test
  void statusAndWordsComeThrough() throws Exception {
    assertEquals("headcourse 0.1.0\n", run("", "--version").out);
    Run missing = run("", "draw", "no such.yaml");
    assertEquals(Main.WRONG, missing.status);
    assertTrue(missing.err.contains("there is no file no such.yaml"), missing.err);
    assertEquals(List.of(), kept());
    Files.delete(program.resolveSibling("headcourse.jar"));
    Run alone = run("", "--version");
    assertEquals(Main.MACHINE, alone.status);
    assertTrue(alone.err.contains("it belongs beside this file"), alone.err);
  }
}
