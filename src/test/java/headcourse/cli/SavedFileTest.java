package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The user's file is replaced whole or not at all. */
class SavedFileTest {
  @TempDir Path folder;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private Path file() throws IOException {
    return Files.writeString(folder.resolve("a.yaml"), "one");
  }

  private void alone() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(List.of("a.yaml"), all.map(p -> p.getFileName().toString()).toList());
    }
  }

  @Test
  void itIsReplacedWithItsPermissions() throws IOException {
    Path file = file();
    boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
    if (posix) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    }
    assertTrue(new SavedFile(file).replace(bytes("one"), bytes("two")));
    assertEquals("two", Files.readString(file));
    if (posix) {
      assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }
    alone();
  }

  @Test
  void whatSomebodyElseSavedStays() throws IOException {
    assertFalse(new SavedFile(file()).replace(bytes("none"), bytes("two")));
    assertEquals("one", Files.readString(folder.resolve("a.yaml")));
    alone();
  }

  @Test
  void onAFullDiskNothingChanges() throws IOException {
    Disk full =
        new Disk() {
          @Override
          public void write(Path path, Content content) throws IOException {
            Files.write(path, new byte[1]);
            throw new IOException("no space left on device");
          }
        };
    SavedFile saved = new SavedFile(file(), full);
    assertThrows(IOException.class, () -> saved.replace(bytes("one"), bytes("two")));
    assertEquals("one", Files.readString(folder.resolve("a.yaml")));
    alone();
  }
}
