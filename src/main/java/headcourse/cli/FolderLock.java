package headcourse.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps other runs of the program out of a folder: a lock on a file, which the system gives back
 * even when the run is killed. One at a time in a process.
 */
final class FolderLock {
  /** How long to wait for another run, in tries. */
  private static final int TRIES = 1500;

  private static final long PAUSE = 20;

  /** Tries after which a file that can't be opened is not just being taken away. */
  private static final int DENIED = 10;

  // Beyond the content, because a system may refuse writing what is locked.
  private static final long PLACE = Long.MAX_VALUE - 1;

  private final Path file;
  private final FileChannel channel;

  private FolderLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** Waits until no other run has the lock; gives up after half a minute. */
  static FolderLock take(Path file) throws IOException {
    for (int i = 0; i < TRIES; i++) {
      FolderLock lock = tried(file, i < DENIED);
      if (lock != null) {
        return lock;
      }
      try {
        Thread.sleep(PAUSE);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        break;
      }
    }
    throw new FileSystemException(
        file.toString(), null, "another run is writing there; try again when it is done");
  }

  private static FolderLock tried(Path file, boolean again) throws IOException {
    FileChannel channel;
    try {
      channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    } catch (AccessDeniedException e) {
      if (again && Files.exists(file)) {
        return null;
      }
      throw e;
    }
    boolean taken = false;
    try {
      FileLock lock = channel.tryLock(PLACE, 1, false);
      taken = lock != null && named(file, channel);
    } catch (OverlappingFileLockException e) {
      taken = false;
    } finally {
      if (!taken) {
        channel.close();
      }
    }
    return taken ? new FolderLock(file, channel) : null;
  }

  /**
   * Whether the file that is locked still has its name: the run before takes its own away. Told by
   * its length, this process's number, because to open it once more and close it gives up the lock
   * (POSIX, fcntl: "all locks ... shall be removed when a file descriptor for that file is
   * closed").
   */
  private static boolean named(Path file, FileChannel channel) throws IOException {
    long sign = ProcessHandle.current().pid();
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(new byte[] {'\n'}), sign);
    try {
      return Files.size(file) == sign + 1;
    } catch (NoSuchFileException e) {
      return false;
    }
  }

  /** Gives the lock back. */
  void close() throws IOException {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      return; // It stays; an old one is in nobody's way.
    } finally {
      channel.close();
    }
  }
}
