package headcourse.cli;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps what was printed until the whole set is there: in memory, or what is much in a file of the
 * system's folder for such files. That one has no name while it is open, or one that the system
 * takes away, so that nothing of it stays even where the run is killed.
 */
final class Scratch implements Closeable {
  private FileChannel file;

  /** What prints. */
  interface Printing {
    /** Prints all of it; does not close. */
    void to(OutputStream out) throws IOException;
  }

  /** In memory; from as many threads as there are. */
  static Content inMemory(Printing printing) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
    printing.to(out);
    return of(out.toByteArray());
  }

  /** Some bytes. */
  static Content of(byte[] bytes) {
    return out -> {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        out.write(rest);
      }
    };
  }

  /** In the file; one after the other, and to be used before this is closed. */
  Content onDisk(Printing printing) throws IOException {
    if (file == null) {
      Path name = Files.createTempFile("headcourse", ".tmp");
      file =
          FileChannel.open(
              name,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              StandardOpenOption.DELETE_ON_CLOSE);
    }
    long start = file.size();
    file.position(start);
    // Not closed: that would close the file.
    OutputStream out = new BufferedOutputStream(Channels.newOutputStream(file), 1 << 16);
    printing.to(out);
    out.flush();
    FileChannel kept = file;
    long end = kept.position();
    return to -> {
      for (long at = start; at < end; ) {
        at += kept.transferTo(at, end - at, to);
      }
    };
  }

  @Override
  public void close() throws IOException {
    if (file != null) {
      file.close();
    }
  }
}
