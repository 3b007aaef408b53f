package headcourse.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;

/**
 * A file of the user's that is given another content in one step: the new one is written beside it,
 * through to the disk, and renamed to its name. Whatever stops the program, the file holds the one
 * or the other whole.
 */
record SavedFile(Path path, Disk disk) {
  SavedFile(Path path) {
    this(path, Disk.REAL);
  }

  /**
   * Gives it another content.
   *
   * @param was what it must still hold
   * @return false where something else stands in it by now; then it stays
   */
  boolean replace(byte[] was, byte[] now) throws IOException {
    // Where it is a link, the file that it leads to is replaced and the link stays.
    Path file = path.toRealPath();
    Path part = file.resolveSibling("." + file.getFileName() + ".part");
    Files.deleteIfExists(part);
    try {
      disk.write(part, out -> whole(out, now));
      permit(file, part);
      if (!Arrays.equals(was, Files.readAllBytes(file))) {
        return false;
      }
      disk.move(part, file);
    } finally {
      Files.deleteIfExists(part);
    }
    disk.settle(file.getParent());
    return true;
  }

  private static void whole(WritableByteChannel out, byte[] content) throws IOException {
    ByteBuffer rest = ByteBuffer.wrap(content);
    while (rest.hasRemaining()) {
      out.write(rest);
    }
  }

  private static void permit(Path like, Path file) throws IOException {
    if (Files.getFileAttributeView(file, PosixFileAttributeView.class) != null) {
      Files.setPosixFilePermissions(file, Files.getPosixFilePermissions(like));
    }
  }
}
