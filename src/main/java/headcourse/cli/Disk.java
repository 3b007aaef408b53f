package headcourse.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The steps on disk that an {@link OutputFolder} is made of; tests stop between any two. */
interface Disk {
  /** The machine's own. */
  Disk REAL = new Disk() {};

  /** Makes a folder. */
  default void folder(Path path) throws IOException {
    Files.createDirectory(path);
  }

  /** Writes a new file, through to the disk. */
  default void write(Path path, Content content) throws IOException {
    try (FileChannel out =
        FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      content.to(out);
      out.force(true);
    }
  }

  /** Gives a file a second name, or a twin where the disk knows no second names. */
  default void link(Path file, Path name) throws IOException {
    if (Files.isSymbolicLink(file)) {
      Files.copy(file, name, LinkOption.NOFOLLOW_LINKS);
      return;
    }
    try {
      Files.createLink(name, file);
    } catch (IOException | UnsupportedOperationException e) {
      Files.copy(file, name, StandardCopyOption.COPY_ATTRIBUTES);
    }
  }

  /** Renames a file or a folder, in one step. */
  default void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Deletes a file or an empty folder. */
  default void delete(Path path) throws IOException {
    Files.delete(path);
  }

  /** Waits until names in a folder are on the disk, where the system lets one. */
  default void settle(Path folder) {
    try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
      names.force(true);
    } catch (IOException e) {
      return; // Windows opens no folders, and needs no such thing.
    }
  }
}
