package headcourse.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Shows a file or an address in what the system shows such things with. */
interface Viewer {
  /** The system's own. */
  Viewer SYSTEM =
      place -> new ProcessBuilder(command(System.getProperty("os.name", ""), place)).start();

  /** Shows it. */
  void show(String place) throws IOException;

  /** Shows a file. */
  default void show(Path file) throws IOException {
    show(file.toAbsolutePath().normalize().toString());
  }

  /** What opens a file on a system. */
  static List<String> command(String system, String place) {
    String os = system.toLowerCase(Locale.ROOT);
    return os.contains("win") && !os.contains("darwin")
        ? List.of("rundll32", "url.dll,FileProtocolHandler", place)
        : os.contains("mac") || os.contains("darwin")
            ? List.of("open", place)
            : List.of("xdg-open", place);
  }
}
