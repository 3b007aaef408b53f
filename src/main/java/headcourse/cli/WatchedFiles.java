package headcourse.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;

/** A job file and all that it was looked for beside it, to see whether one was saved. */
final class WatchedFiles {
  private final Set<Path> files = new ConcurrentSkipListSet<>();

  /** One more, there or not. */
  void add(Path file) {
    files.add(file);
  }

  /** What tells one content of the files from another. */
  String state() {
    StringBuilder s = new StringBuilder();
    for (Path p : files) {
      try {
        s.append(p).append(' ').append(OutputWriter.hash(Files.readAllBytes(p))).append('\n');
      } catch (IOException e) {
        s.append(p).append(" none\n");
      }
    }
    return s.toString();
  }
}
