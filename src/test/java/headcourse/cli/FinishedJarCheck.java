package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The packaged program, of which only the classes that are reached are left: every command runs in
 * a process of its own, and what it draws is what {@code out/} keeps. Run after packaging.
 */
class FinishedJarCheck {
  private static final Path JAR = Path.of("target", "headcourse.jar");

  @TempDir Path folder;

  private record Run(int status, String out, String err) {}

  private Run run(String... args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    command.addAll(List.of("-jar", JAR.toAbsolutePath().toString()));
    command.addAll(List.of(args));
    Path out = folder.resolve("stdout");
    Path err = folder.resolve("stderr");
    Process p =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    int status = p.waitFor();
    return new Run(status, Files.readString(out), Files.readString(err));
  }

  private void copy(Path from) throws IOException {
    try (Stream<Path> files = Files.list(from)) {
      for (Path p : files.toList()) {
        Files.copy(p, folder.resolve(p.getFileName()));
      }
    }
  }

  static Stream<String> jobs() throws IOException {
    return DemoJobsTest.jobs();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void drawsWhatIsKept(String job) throws Exception {
    copy(Path.of("jobs"));
    copy(Path.of("templates"));
    Files.writeString(
        folder.resolve(job),
        Files.readString(folder.resolve(job))
            .replaceFirst("(?m)^paper:.*\\R", "$0frame: notes.svg\n"));
    assertTrue(Files.readString(folder.resolve(job)).contains("\nframe: notes.svg\n"));
    Run run = run("draw", job, "--out", "drawn");
    assertEquals(Main.DONE, run.status, run.err);
    String name = job.replace(".yaml", "");
    try (Stream<Path> kept = Files.list(Path.of("out", name))) {
      // What the user drew there besides is not kept.
      for (Path p :
          kept.sorted().filter(f -> DemoJobsTest.kept(f.getFileName().toString())).toList()) {
        Path drawn = folder.resolve("drawn").resolve(name).resolve(p.getFileName());
        assertEquals(Files.readString(p), Files.readString(drawn), p.toString());
      }
    }
    for (String file : List.of("bench.pdf", "wall.pdf", "contractor.pdf", "full-size.pdf")) {
      byte[] pdf = Files.readAllBytes(folder.resolve("drawn").resolve(name).resolve(file));
      String text = new String(pdf, StandardCharsets.ISO_8859_1);
      assertTrue(text.startsWith("%PDF-1.7") && text.endsWith("%%EOF\n"), file);
    }
  }

  private static String picture(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    BufferedImage image = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
    image.setRGB(3, 3, 0xC04020);
    assertTrue(ImageIO.write(image, format, out));
    String data = Base64.getEncoder().encodeToString(out.toByteArray());
    return "<image x=\"30\" y=\"14\" width=\"9\" height=\"9\" href=\"data:image/%s;base64,%s\"/>"
        .formatted(format, data);
  }

  /** A frame of the user's own with pictures of both kinds, in both languages. */
  @Test
  void drawsPictures() throws Exception {
    String plain = Files.readString(Path.of("templates", "plain.svg"));
    Files.writeString(
        folder.resolve("own.svg"),
        plain.replace("</svg>", picture("png") + picture("jpeg") + "</svg>"));
    Files.writeString(
        folder.resolve("own.yaml"),
        """
        units: in
        paper: tabloid
        language: en+es
        frame: own.svg
        stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
        openings:
          - {mark: D1, width: 8'}
          - {mark: A1, width: 4', head: {shape: elliptical, rise: 1', height: 8}}
        """);
    Run run = run("draw", "own.yaml");
    assertTrue(run.status <= Main.FINDINGS, run.err);
    byte[] pdf = Files.readAllBytes(folder.resolve("out/own/wall.pdf"));
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    assertTrue(text.contains("/DCTDecode"), "no JPEG");
    assertTrue(text.split("/Subtype /Image").length > 2, "no PNG");
  }

  /** Elevations in pixels where they are asked for; none is left of a head that has changed. */
  @Test
  void drawsElevationsAsPictures() throws Exception {
    copy(Path.of("jobs"));
    Run run = run("draw", "forge-arch.yaml", "--only", "png");
    assertTrue(run.status <= Main.FINDINGS, run.err);
    assertEquals("out/forge-arch/elevation-S1.png\n", run.out);
    Path picture = folder.resolve("out/forge-arch/elevation-S1.png");
    assertEquals(1600, ImageIO.read(picture.toFile()).getWidth());
    run("draw", "forge-arch.yaml", "--only", "svg");
    assertTrue(Files.notExists(picture), "an old picture is left");
    Files.writeString(
        folder.resolve("forge-arch.yaml"),
        "pictures: true\n" + Files.readString(folder.resolve("forge-arch.yaml")));
    run = run("draw", "forge-arch.yaml");
    assertTrue(run.out.contains("elevation-S1.png\n"), run.out);
  }

  @Test
  void saysWhatIsWrong() throws Exception {
    Files.writeString(folder.resolve("bad.yaml"), "units: in\nopenings:\n  - {mrk: D1}\n");
    Run run = run("draw", "bad.yaml");
    assertEquals(Main.WRONG, run.status, run.err);
    assertTrue(run.err.contains("bad.yaml:3") && run.err.contains("mrk"), run.err);
    Files.writeString(folder.resolve("broken.yaml"), "units: [in\n");
    run = run("check", "broken.yaml");
    assertEquals(Main.WRONG, run.status, run.err);
    assertTrue(run.err.contains("broken.yaml:"), run.err);
  }

  @Test
  void otherCommandsRun() throws Exception {
    assertEquals(Main.DONE, run("new", "fresh.yaml").status);
    Run run = run("check", "fresh.yaml");
    assertEquals(Main.DONE, run.status, run.err);
    run = run("rules");
    assertEquals(Main.DONE, run.status, run.err);
    assertTrue(run.out.contains("lifting"), run.out);
    run = run("--version");
    assertTrue(run.out.matches("headcourse \\d+\\.\\d+\\.\\d+\\R"), run.out + run.err);
    run = run("--help");
    assertTrue(run.out.contains("draw"), run.out);
  }
}
