import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * A step of the build: a Debian package of the folder that MakeFolder made. Arguments: the folder,
 * where to put the package, its version, and the time that its files bear.
 */
final class MakeDeb {
  private static final String MAINTAINER = "headcourse contributors <headcourse@localhost>";

  private final Path folder;
  private final Path root;
  private final String version;
  private final Instant time;

  private MakeDeb(Path folder, Path root, String version, Instant time) {
    this.folder = folder;
    this.root = root;
    this.version = version;
    this.time = time;
  }

  public static void main(String[] args) throws Exception {
    Path root = Files.createTempDirectory("headcourse-deb");
    MakeDeb m = new MakeDeb(Path.of(args[0]), root, args[2], Instant.parse(args[3]));
    for (String tool : List.of("dpkg-deb", "dpkg-shlibdeps")) {
      if (!there(tool)) {
        System.out.println(
            "no .deb is made: there is no "
                + tool
                + " here (Debian: dpkg-dev); the folder is whole");
        return;
      }
    }
    m.make(Path.of(args[1]));
    delete(root);
  }

  private void make(Path to) throws Exception {
    Path lib = root.resolve("usr/lib/headcourse");
    copy(folder.resolve("bin/headcourse"), lib.resolve("bin/headcourse"));
    copyAll(folder.resolve("lib"), lib.resolve("lib"));
    copyAll(folder.resolve("share"), root.resolve("usr/share"));
    Path zsh = root.resolve("usr/share/zsh");
    Files.move(zsh.resolve("site-functions"), zsh.resolve("vendor-completions"));
    Path bin = Files.createDirectories(root.resolve("usr/bin"));
    Files.createSymbolicLink(
        bin.resolve("headcourse"), Path.of("../lib/headcourse/bin/headcourse"));
    Path manual = root.resolve("usr/share/man/man1/headcourse.1");
    packed(manual.resolveSibling("headcourse.1.gz"), Files.readAllBytes(manual));
    Files.delete(manual);
    packed(root.resolve("usr/share/doc/headcourse/changelog.gz"), changelog());
    String architecture = said(root, "dpkg", "--print-architecture").strip();
    Path control = Files.createDirectories(root.resolve("DEBIAN"));
    Files.writeString(control.resolve("md5sums"), sums());
    Files.writeString(control.resolve("control"), control(architecture, depends(lib)));
    modes();
    Path deb = to.resolve("headcourse_" + version + "_" + architecture + ".deb");
    said(
        root,
        "dpkg-deb",
        "--root-owner-group",
        "-Zxz",
        "-z2",
        "--build",
        ".",
        deb.toAbsolutePath().toString());
    System.out.println("made " + deb + ", " + (Files.size(deb) >> 20) + " MB");
  }

  // Java asks fontconfig for letters when a picture is drawn, and loads it by name.
  private String control(String architecture, String depends) throws IOException {
    long kibibytes = 0;
    for (Path p : files()) {
      kibibytes += (Files.size(p) + 1023) / 1024;
    }
    return """
    Package: headcourse
    Version: %s
    Architecture: %s
    Maintainer: %s
    Installed-Size: %d
    Depends: %s, libfontconfig1
    Suggests: xdg-utils
    Section: graphics
    Priority: optional
    Description: shop drawings for stone heads over openings
     From one job file headcourse sets out heads of thin stone veneer over doors and
     windows, and draws the sheets for the cutting bench, the wall, the supplier and
     the contractor. The veneer carries nothing; nothing here is structural design.
     .
     The package brings its own Java.
    """
        .formatted(version, architecture, MAINTAINER, kibibytes, depends);
  }

  /** The libraries of the system that those of the runtime call, as its own tool finds them. */
  private String depends(Path lib) throws Exception {
    Path scratch = Files.createDirectories(root.resolve("scratch/debian"));
    Files.writeString(
        scratch.resolve("control"),
        "Source: headcourse\n\nPackage: headcourse\nArchitecture: any\n");
    List<String> command =
        new ArrayList<>(List.of("dpkg-shlibdeps", "-O", "--ignore-missing-info"));
    for (Path p : files()) {
      if (p.toString().endsWith(".so")) {
        command.add("-l" + p.getParent());
        command.add("-e" + p);
      }
    }
    String found = said(scratch.getParent(), command.toArray(String[]::new));
    delete(scratch.getParent());
    String line =
        found.lines().filter(l -> l.startsWith("shlibs:Depends=")).findFirst().orElse("=");
    return line.substring(line.indexOf('=') + 1);
  }

  private byte[] changelog() {
    String when =
        DateTimeFormatter.ofPattern("EEE, dd MMM yyyy HH:mm:ss Z", Locale.ROOT)
            .format(time.atOffset(ZoneOffset.UTC));
    return ("headcourse (%s) unstable; urgency=low\n\n"
                + "  * See the project's history.\n\n"
                + " -- %s  %s\n")
        .formatted(version, MAINTAINER, when)
        .getBytes(StandardCharsets.UTF_8);
  }

  private String sums() throws IOException, NoSuchAlgorithmException {
    StringBuilder s = new StringBuilder();
    for (Path p : files()) {
      byte[] sum = MessageDigest.getInstance("MD5").digest(Files.readAllBytes(p));
      s.append(HexFormat.of().formatHex(sum)).append("  ").append(root.relativize(p)).append('\n');
    }
    return s.toString();
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(root.resolve("usr"))) {
      return all.filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS)).sorted().toList();
    }
  }

  /** For all to read; to run what runs. The times are those that the archive of classes saw. */
  private void modes() throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        if (!Files.isSymbolicLink(p)) {
          boolean runs =
              Files.isDirectory(p) || p.toFile().canExecute() && !p.toString().endsWith(".so");
          boolean starts = p.getParent().endsWith("bin") || p.endsWith("jspawnhelper");
          String mode = Files.isDirectory(p) || runs && starts ? "rwxr-xr-x" : "rw-r--r--";
          Files.setPosixFilePermissions(p, PosixFilePermissions.fromString(mode));
          Files.setLastModifiedTime(p, FileTime.from(time));
        }
      }
    }
  }

  /** Packed without name and time, so that the same text gives the same bytes. */
  private static void packed(Path to, byte[] bytes) throws IOException {
    try (OutputStream file = Files.newOutputStream(to);
        GZIPOutputStream out = new Best(file)) {
      out.write(bytes);
    }
  }

  private static final class Best extends GZIPOutputStream {
    Best(OutputStream out) throws IOException {
      super(out);
      def.setLevel(Deflater.BEST_COMPRESSION);
    }
  }

  private static boolean there(String program) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(p -> Files.isExecutable(Path.of(p, program)));
  }

  private String said(Path in, String... command) throws IOException, InterruptedException {
    ProcessBuilder b = new ProcessBuilder(command).directory(in.toFile());
    b.environment().put("SOURCE_DATE_EPOCH", "" + time.getEpochSecond());
    b.environment().put("LC_ALL", "C");
    Path err = Files.createTempFile("headcourse", ".err");
    Process p = b.redirectError(err.toFile()).start();
    String out = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (p.waitFor() != 0) {
      throw new IllegalStateException(String.join(" ", command) + "\n" + Files.readString(err));
    }
    Files.delete(err);
    return out;
  }

  private static void copyAll(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        copy(p, to.resolve(from.relativize(p).toString()));
      }
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to.getParent());
    Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    }
  }
}
