package headcourse.faults;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/**
 * Plants the faults of {@code faults.yaml} one at a time and says which of them the guarding tests
 * catch. A fault is compiled by itself into a folder that lies before the classes on the class path
 * of a process of its own; nothing of the project is written over. Fails where more than two are
 * not caught, or where a fault's text is no longer in the source.
 */
public final class PlantedFaults {
  private static final int MOST_MISSED = 2;
  private static final long MINUTES = 60;
  private static final Path FOLDER = Path.of("target/faults");

  private PlantedFaults() {}

  /**
   * Runs it.
   *
   * @param args names of faults, or parts of them; none for all
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    List<String> missed = new ArrayList<>();
    List<String> stale = new ArrayList<>();
    int tried = 0;
    for (Fault fault : Fault.all()) {
      if (args.length > 0 && Stream.of(args).noneMatch(fault.name()::contains)) {
        continue;
      }
      tried++;
      String source = fault.planted();
      if (source.isEmpty()) {
        stale.add(fault.name());
        System.out.println(
            "GONE    " + fault.name() + ": its text does not stand once in " + fault.file());
        continue;
      }
      clear();
      if (!overlay(fault, source)) {
        stale.add(fault.name());
        System.out.println("GONE    " + fault.name() + ": it does not compile");
        continue;
      }
      String by = run();
      System.out.println(
          (by.isEmpty() ? "MISSED  " : "caught  ")
              + fault.name()
              + (by.isEmpty() ? "" : ": " + by));
      if (by.isEmpty()) {
        missed.add(fault.name());
      }
    }
    clear();
    int caught = tried - missed.size() - stale.size();
    System.out.println(caught + " of " + tried + " faults caught");
    if (missed.size() > MOST_MISSED || !stale.isEmpty()) {
      System.exit(1);
    }
  }

  private static void clear() throws IOException {
    if (Files.exists(FOLDER)) {
      try (Stream<Path> all = Files.walk(FOLDER)) {
        for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(p);
        }
      }
    }
  }

  private static boolean overlay(Fault fault, String source) throws IOException {
    Path classes = FOLDER.resolve("classes");
    Files.createDirectories(classes);
    Path file = (fault.resource() ? classes : FOLDER.resolve("java")).resolve(fault.place());
    Files.createDirectories(file.getParent());
    Files.writeString(file, source);
    if (fault.resource()) {
      return true;
    }
    return 0
        == ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                null,
                null,
                "-proc:none",
                "-nowarn",
                "-parameters",
                "--release",
                "17",
                "-d",
                classes.toString(),
                "-cp",
                System.getProperty("java.class.path"),
                file.toString());
  }

  // What the first test that failed said; empty where all passed.
  private static String run() throws IOException, InterruptedException {
    File said = FOLDER.resolve("said").toFile();
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true",
                "-cp",
                FOLDER.resolve("classes")
                    + File.pathSeparator
                    + System.getProperty("java.class.path"),
                GuardRun.class.getName())
            .redirectErrorStream(true)
            .redirectOutput(said)
            .start();
    if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
      // Not caught: a loaded machine is slow without any fault.
      process.destroyForcibly();
      throw new IOException("the tests took longer than " + MINUTES + " minutes");
    }
    if (process.exitValue() == 0) {
      return "";
    }
    List<String> lines = Files.readAllLines(said.toPath());
    return lines.stream()
        .filter(l -> l.startsWith(GuardRun.CAUGHT))
        .map(l -> l.substring(GuardRun.CAUGHT.length()))
        .findFirst()
        .orElseThrow(() -> new IOException("the tests could not be run: " + lines));
  }
}
