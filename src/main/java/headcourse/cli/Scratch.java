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
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Keeps what was printed until the whole set is there: in memory, or what is much in files of the
 * system's folder for such. They have no name while they are open, or one that the system takes
 * away, so that nothing of them stays even where the run is killed.
 */
final class Scratch implements Closeable {
  private final List<FileChannel> all = new ArrayList<>();
  private final Deque<FileChannel> free = new ArrayDeque<>();

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

  /** In a file; to be used before this is closed. As many files as print at a time. */
  Content onDisk(Printing printing) throws IOException {
    FileChannel file = taken();
    long start = file.size();
    file.position(start);
    // Not closed: that would close the file.
    OutputStream out = new BufferedOutputStream(Channels.newOutputStream(file), 1 << 16);
    printing.to(out);
    out.flush();
    long end = file.position();
    given(file);
    return to -> {
      for (long at = start; at < end; ) {
        at += file.transferTo(at, end - at, to);
      }
    };
  }

  private synchronized FileChannel taken() throws IOException {
    if (free.isEmpty()) {
      FileChannel file =
          FileChannel.open(
              Files.createTempFile("headcourse", ".tmp"),
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              StandardOpenOption.DELETE_ON_CLOSE);
      all.add(file);
      return file;
    }
    return free.pop();
  }

  private synchronized void given(FileChannel file) {
    free.push(file);
  }

  @Override
  public synchronized void close() throws IOException {
    for (FileChannel file : all) {
      file.close();
    }
  }
}
