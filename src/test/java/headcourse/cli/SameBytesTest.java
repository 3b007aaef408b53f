package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same job gives the same bytes under another time zone, locale, heap and encoding. */
class SameBytesTest {
  @TempDir Path folder;

  private Path draw(String name, String... options) throws IOException, InterruptedException {
    Path out = folder.resolve(name);
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(options));
    command.addAll(
        List.of(
            "-cp",
            System.getProperty("java.class.path"),
            "headcourse.cli.Main",
            "draw",
            "jobs/courtyard-windows.yaml",
            "--out",
            out.toString()));
    Process p =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve(name + ".txt").toFile())
            .start();
    int status = p.waitFor();
    assertEquals(0, status, () -> read(folder.resolve(name + ".txt")));
    return out.resolve("courtyard-windows");
  }

  private static String read(Path p) {
    try {
      return Files.readString(p);
    } catch (IOException e) {
      return e.toString();
    }
  }

  @Test
  void otherMachineSameBytes() throws Exception {
    Path plain = draw("plain", "-Xmx512m");
    Path other =
        draw(
            "other",
            "-Xmx96m",
            "-XX:+UseSerialGC",
            "-Duser.timezone=Pacific/Kiritimati",
            "-Duser.language=tr",
            "-Duser.country=TR",
            "-Dfile.encoding=ISO-8859-1");
    List<Path> files;
    try (Stream<Path> list = Files.list(plain)) {
      files = list.sorted().toList();
    }
    assertTrue(files.size() >= 9, files::toString);
    for (Path f : files) {
      assertArrayEquals(
          Files.readAllBytes(f),
          Files.readAllBytes(other.resolve(f.getFileName())),
          f.getFileName().toString());
    }
  }
}
