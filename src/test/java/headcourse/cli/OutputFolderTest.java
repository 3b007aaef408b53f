package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All files together or none. */
class OutputFolderTest {
  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> list = Files.list(folder)) {
      return list.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void replacesAndLeavesNothingBehind() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    Files.writeString(folder.resolve("gone.txt"), "old");
    new OutputFolder(folder)
        .replace(Map.of("a.txt", new byte[] {1}, "b.txt", new byte[] {2}), "gone.txt"::equals);
    assertEquals(List.of("a.txt", "b.txt"), names());
    assertEquals(1, Files.readAllBytes(folder.resolve("a.txt"))[0]);
  }

  @Test
  void aFailureHalfWayBringsEverythingBack() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    // A name with a folder that is not there can't be written, after a.txt's turn has come.
    Map<String, byte[]> files = Map.of("a.txt", new byte[] {1}, "z/z.txt", new byte[] {2});
    assertThrows(IOException.class, () -> new OutputFolder(folder).replace(files, n -> false));
    assertEquals(List.of("a.txt"), names());
    assertEquals("old", Files.readString(folder.resolve("a.txt")));
  }

  @Test
  void aFailedMoveBringsEverythingBack() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    // A folder that is not empty stands where the second file should go once a.txt has moved.
    Files.createDirectories(folder.resolve("b.txt/inside"));
    String aside = ".b.txt." + ProcessHandle.current().pid() + ".old";
    Files.createDirectories(folder.resolve(aside).resolve("full"));
    assertThrows(
        IOException.class,
        () ->
            new OutputFolder(folder)
                .replace(Map.of("a.txt", new byte[] {1}, "b.txt", new byte[] {2}), n -> false));
    assertEquals("old", Files.readString(folder.resolve("a.txt")));
  }
}
