import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * A step of the build: the program as a folder that wants no Java. Arguments: the project, the
 * finished jar, the folder to make, the time that its files bear, and the class path that the jar
 * was made of.
 */
final class MakeFolder {
  /** What desktops need and this program, which has no windows, does not. */
  private static final String WINDOWS =
      "**/libawt_xawt.so,**/libjawt.so,**/libsplashscreen.so,**/libjsound.so,**/jrt-fs.jar";

  /** What a mason's day loads: the commands on demo jobs, each a process. */
  private static final List<List<String>> DAY =
      List.of(
          List.of("draw", "jobs/cart-door.yaml", "jobs/chapel-arches.yaml", "--out", "@"),
          List.of("draw", "jobs/sheep-wash.yaml", "jobs/granary-store.yaml", "--out", "@"),
          List.of("draw", "jobs/forge-arch.yaml", "--only", "png", "--out", "@"),
          List.of("check", "jobs/courtyard-windows.yaml"),
          List.of("choose", "jobs/forge-arch.yaml", "--out", "@"),
          List.of("explain", "jobs/cart-door.yaml"),
          List.of("new", "@/new.yaml"),
          List.of("form", "@/form.pdf"),
          List.of("rules"),
          List.of("--help"));

  private final Path project;
  private final Path folder;
  private final FileTime time;
  private final Path lib;

  private MakeFolder(Path project, Path folder, FileTime time) {
    this.project = project;
    this.folder = folder;
    this.time = time;
    this.lib = folder.resolve("lib");
  }

  public static void main(String[] args) throws IOException, InterruptedException {
    MakeFolder m =
        new MakeFolder(Path.of(args[0]), Path.of(args[2]), FileTime.from(Instant.parse(args[3])));
    m.make(
        Path.of(args[1]),
        List.of(args[4].split(Pattern.quote(System.getProperty("path.separator")))));
  }

  private void make(Path jar, List<String> parts) throws IOException, InterruptedException {
    delete(folder);
    Files.createDirectories(lib);
    runtime(jar);
    Files.copy(jar, lib.resolve("headcourse.jar"));
    for (String launcher : List.of("headcourse", "headcourse.cmd")) {
      copy(project.resolve("src/dist").resolve(launcher), folder.resolve("bin").resolve(launcher));
    }
    java(folder, List.of("-cp", "lib/headcourse.jar", "headcourse.cli.ShippedTexts", "share"));
    Path doc = Files.createDirectories(folder.resolve("share/doc/headcourse"));
    Files.writeString(doc.resolve("copyright"), copyright(parts));
    copy(project.resolve("README.md"), doc.resolve("README.md"));
    try (Stream<Path> jobs = Files.list(project.resolve("jobs"))) {
      for (Path p : jobs.sorted().toList()) {
        copy(p, doc.resolve("examples").resolve(p.getFileName()));
      }
    }
    // Before the archive: it holds good for the times that it saw.
    ageAll();
    archive();
    ageAll();
    System.out.println("made " + folder + ", " + megabytes(folder) + " MB");
  }

  /** A Java of only those modules that the jar reaches. */
  private void runtime(Path jar) throws IOException, InterruptedException {
    String modules =
        tool(
            "jdeps",
            "--ignore-missing-deps",
            "--print-module-deps",
            "--multi-release",
            "17",
            jar.toString());
    System.out.println("modules: " + modules);
    tool(
        "jlink",
        "--add-modules",
        modules,
        "--strip-java-debug-attributes",
        "--no-man-pages",
        "--no-header-files",
        "--compress=0",
        "--exclude-files=" + WINDOWS,
        "--output",
        lib.resolve("runtime").toString());
  }

  private static String tool(String name, String... arguments) {
    ToolProvider tool =
        ToolProvider.findFirst(name)
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "there is no "
                            + name
                            + " in "
                            + System.getProperty("java.home")
                            + "; the package wants a whole JDK (Debian: openjdk-17-jdk-headless)"));
    StringWriter said = new StringWriter();
    PrintWriter to = new PrintWriter(said, true);
    int status = tool.run(to, to, arguments);
    if (status != 0) {
      throw new IllegalStateException(name + " failed:\n" + said);
    }
    return said.toString().strip();
  }

  /** Archives what a day's commands load, in place of the archive of Java's own classes. */
  private void archive() throws IOException, InterruptedException {
    Path scratch = Files.createTempDirectory("headcourse");
    Set<String> classes = new LinkedHashSet<>();
    for (List<String> command : DAY) {
      Path list = scratch.resolve("classes");
      List<String> line =
          new ArrayList<>(
              List.of(
                  "-Xshare:off",
                  "-XX:DumpLoadedClassList=" + list,
                  "-XX:TieredStopAtLevel=1",
                  "-XX:+UseSerialGC",
                  "-Djava.awt.headless=true",
                  "-Dheadcourse.folder=" + project.toAbsolutePath(),
                  "-jar",
                  "headcourse.jar"));
      command.forEach(a -> line.add(a.replace("@", scratch.toString())));
      java(lib, line);
      classes.addAll(Files.readAllLines(list));
    }
    Path all = Files.write(scratch.resolve("all"), classes);
    java(
        lib,
        List.of(
            "-Xshare:dump",
            "-XX:+UseSerialGC",
            "-XX:SharedClassListFile=" + all,
            "-XX:SharedArchiveFile=headcourse.classes",
            "-Xlog:disable",
            "-Xlog:all=error:stderr",
            "-cp",
            "headcourse.jar"));
    delete(scratch);
  }

  private void java(Path in, List<String> arguments) throws IOException, InterruptedException {
    boolean windows = System.getProperty("os.name").startsWith("Windows");
    Path java = lib.resolve("runtime/bin").resolve(windows ? "java.exe" : "java");
    List<String> command = new ArrayList<>(List.of(java.toAbsolutePath().toString()));
    command.addAll(arguments);
    Process p =
        new ProcessBuilder(command).directory(in.toFile()).redirectErrorStream(true).start();
    String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    // A drawing with an error among its findings is a drawing.
    if (p.waitFor() > 1) {
      throw new IllegalStateException(String.join(" ", command) + "\n" + said);
    }
  }

  /** Whose each part is, with its licence. */
  private String copyright(List<String> parts) throws IOException {
    StringBuilder s = new StringBuilder();
    s.append("headcourse is free software under the Apache License 2.0, printed first below.\n");
    s.append("It brings other free software, each part under its own licence.\n\n");
    Set<String> printed = new TreeSet<>();
    s.append(heading("headcourse"));
    text(s, Files.readString(project.resolve("LICENSE")), printed);
    for (String part : parts) {
      if (part.endsWith(".jar")) {
        library(s, Path.of(part), printed);
      }
    }
    Path fonts = project.resolve("target/fonts/net/sf/jasperreports/fonts/dejavu/LICENSE");
    s.append(heading("DejaVu Sans Condensed, cut down to the letters of sheets"));
    text(s, Files.readString(fonts), printed);
    String java =
        System.getProperty("java.vendor") + ", " + System.getProperty("java.runtime.version");
    s.append(heading("Java, by " + java));
    s.append(
        """
        A runtime of OpenJDK, linked from the modules that the program reaches: the GNU General
        Public License, version 2, with the Classpath Exception. Its licences and notices lie
        whole beside it, in lib/runtime/legal of the program's folder. Its source is that of the
        JDK it was linked from, to be had where that is: https://openjdk.org, or from the source
        package openjdk-%d of the distribution.
        """
            .formatted(Runtime.version().feature()));
    return s.toString();
  }

  private static void library(StringBuilder s, Path jar, Set<String> printed) throws IOException {
    s.append(heading(jar.getFileName().toString().replaceFirst("\\.jar$", "")));
    int before = s.length();
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      List<? extends ZipEntry> entries =
          zip.stream()
              .filter(e -> !e.isDirectory())
              .sorted(Comparator.comparing(ZipEntry::getName))
              .toList();
      for (ZipEntry e : entries) {
        if (e.getName().matches("(META-INF/|license/)?(LICENSE|NOTICE|README\\.dom)[^/]*")) {
          text(s, read(zip, e), printed);
        }
      }
      if (s.length() == before) {
        Pattern named = Pattern.compile("(?s)<license>\\s*<name>(.*?)</name>");
        entries.stream()
            .filter(e -> e.getName().matches("META-INF/maven/.*/pom\\.xml"))
            .flatMap(e -> named.matcher(read(zip, e)).results())
            .forEach(m -> s.append(m.group(1)).append("\n\n"));
      }
    }
    if (s.length() == before) {
      throw new IllegalStateException("no licence in " + jar);
    }
  }

  private static String read(ZipFile zip, ZipEntry e) {
    try {
      return new String(zip.getInputStream(e).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException x) {
      throw new UncheckedIOException(x);
    }
  }

  /** A text that stands above already is not printed again, only its first line. */
  private static void text(StringBuilder s, String text, Set<String> printed) {
    String plain = text.replace("\r", "").strip();
    boolean anew = printed.add(plain.replaceAll("\\s+", " "));
    s.append(anew ? plain : plain.lines().findFirst().orElse("").strip() + " (as above)");
    s.append("\n\n");
  }

  private static String heading(String name) {
    return "=".repeat(78) + "\n" + name + "\n" + "=".repeat(78) + "\n";
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to.getParent());
    Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
  }

  private void ageAll() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path p : files.toList()) {
        Files.setLastModifiedTime(p, time);
      }
    }
  }

  private static long megabytes(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).mapToLong(p -> p.toFile().length()).sum() >> 20;
    }
  }

  private static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path p : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(p);
        }
      }
    }
  }
}
