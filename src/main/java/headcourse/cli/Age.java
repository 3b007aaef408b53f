package headcourse.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How old the sheets in a folder are, for messages: the one place where the clock is looked at.
 * Nothing that is drawn depends on it.
 */
final class Age {
  private static final long MINUTE = 60;
  private static final long HOUR = 60 * MINUTE;
  private static final long DAY = 24 * HOUR;

  private Age() {}

  /** Older sheets in a folder, and how old; empty where there are none. */
  static Optional<String> ofSheets(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> sheets =
          files.filter(p -> p.getFileName().toString().matches(".*\\.(pdf|svg|html)")).toList();
      long latest = 0;
      for (Path p : sheets) {
        latest = Math.max(latest, Files.getLastModifiedTime(p).toMillis());
      }
      return sheets.isEmpty()
          ? Optional.empty()
          : Optional.of(words((System.currentTimeMillis() - latest) / 1000));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** {@code 3 hours old}. */
  static String words(long seconds) {
    if (seconds < MINUTE) {
      return "less than a minute old";
    }
    long unit = seconds < 2 * HOUR ? MINUTE : seconds < 2 * DAY ? HOUR : DAY;
    long n = seconds / unit;
    String word = unit == MINUTE ? "minute" : unit == HOUR ? "hour" : "day";
    return n + " " + word + (n == 1 ? "" : "s") + " old";
  }
}
