package headcourse.job.yaml;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Outcome;
import headcourse.job.Job;
import headcourse.testing.Seeds;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What an enemy, or an accident, may put into a job file. */
class HostileFilesTest {
  static Stream<byte[]> hostile() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
    for (int i = 1; i < 30; i++) {
      bomb.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
    }
    Stream<String> texts =
        Stream.of(
            "",
            "# nothing\n",
            "just words",
            "- a\n- list\n",
            "a: !!javax.script.ScriptEngineManager [x]\n",
            "openings: !custom {a: b}\n",
            "a: !!binary AAAA\n",
            bomb.toString(),
            "a: " + "[".repeat(10_000),
            "a: " + "{a: ".repeat(5_000),
            "- ".repeat(20_000),
            "a: &a [*a]\n",
            "a: &a {b: *a}\n",
            "? [x, y]\n: z\n",
            "stone: {thickness: 1}\nstone: {thickness: 2}\n",
            "a: 1\n---\nb: 2\n",
            "a: \u0000\n",
            "a: \"\\UFFFFFFFF\"\n",
            "a: '" + "x".repeat(2_200_000) + "'",
            "k".repeat(200_000),
            "a: " + "\"\\x41\"".repeat(10_000),
            "a: &b\n".repeat(20_000),
            "stone: {thickness: 1e300}\nopenings: [{width: NaN}]\n",
            "stone: {thickness: 1}\nopenings: [{width: 96, mark: ../../etc}]\n",
            "stone: {thickness: 1}\nopenings: [{width: 96}]\nstock: {file: ../secret.csv}\n",
            "%TAG ! tag:x,2000:\n---\na: !b c\n",
            "\uFEFF",
            // One line with a wide letter and as many values as a file can hold.
            "{\u77f3: 1, spoiled: [" + "a,".repeat(1_000_000) + "]}",
            "{\u77f3: 1, stock: {corners: [" + "{},".repeat(640_000) + "]}}",
            "{\u77f3: 1, openings: [{width: 90}], fitted: {D1: {" + keys() + "}}}",
            "stone: {thickness: 1}\nopenings: [{width: 96}]\n" + keys().replace(", ", "\n"));
    return Stream.concat(
        texts.map(s -> s.getBytes(StandardCharsets.UTF_8)),
        Stream.of(
            new byte[] {'a', ':', ' ', (byte) 0xFF, (byte) 0xFE},
            new byte[4 << 20],
            new byte[100]));
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void refusedSoon(byte[] bytes) {
    Outcome<Job> outcome = bounded(bytes, p -> Optional.empty());
    assertTrue(outcome.value().isEmpty());
    assertFalse(outcome.diagnostics().isEmpty());
    assertTrue(outcome.diagnostics().stream().allMatch(d -> d.span() != null));
  }

  private static String keys() {
    return IntStream.range(0, 20_000).mapToObj(i -> "k" + i + ": 1").collect(joining(", "));
  }

  static Stream<String> sheets() {
    return Stream.of(
        "mark,arris,face,return\n\u77f3" + ",x".repeat(100_000),
        "\u77f3" + IntStream.range(0, 30_000).mapToObj(i -> "," + i).collect(joining()),
        "mark,arris,face,return\n"
            + IntStream.range(0, 4_999).mapToObj(i -> "C" + i + ",1,1,1\n").collect(joining()),
        "mark\n" + "a\n".repeat(100_000),
        "mark\n\"" + "x".repeat(200_000));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void sheetsAreReadInUnderASecond(String sheet) {
    String job =
        "stone: {thickness: 1}\nopenings: [{width: 96}]\nstock: {file: y.csv}\nspoiled: ["
            + "C4998#2,".repeat(9_999)
            + "]\n";
    Outcome<Job> outcome =
        bounded(
            job.getBytes(StandardCharsets.UTF_8),
            p -> Optional.of(sheet.getBytes(StandardCharsets.UTF_8)));
    assertTrue(outcome.value().isEmpty());
  }

  @Test
  void mutatedFilesNeverThrow() throws IOException {
    byte[] good = Files.readAllBytes(Path.of("src/main/resources/headcourse/new-job.yaml"));
    byte[] full = Files.readAllBytes(Path.of("jobs/courtyard-windows.yaml"));
    byte[] odd = "[]{}:,&*!|>'\"%@`#-?\n\t 0/\u00bd".getBytes(StandardCharsets.UTF_8);
    for (long seed = 0; seed < Seeds.of(2000); seed++) {
      Random random = new Random(seed);
      byte[] b = (random.nextBoolean() ? good : full).clone();
      for (int n = 1 + random.nextInt(4); n > 0; n--) {
        int at = random.nextInt(b.length);
        switch (random.nextInt(3)) {
          case 0 -> b[at] = odd[random.nextInt(odd.length)];
          case 1 -> b[at] = (byte) random.nextInt(256);
          default -> {
            int from = random.nextInt(b.length);
            int length = Math.min(random.nextInt(60), b.length - Math.max(at, from));
            System.arraycopy(b.clone(), from, b, at, length);
          }
        }
      }
      try {
        Outcome<Job> o = ReaderCase.read("job.yaml", b, p -> Optional.empty());
        assertTrue(o.value().isPresent() || !o.diagnostics().isEmpty(), "seed " + seed);
        ReaderCase.said(o);
      } catch (RuntimeException | StackOverflowError e) {
        throw new AssertionError("seed " + seed, e);
      }
    }
  }

  /**
   * Reads and says a file, of up to 2 MiB, within three seconds of processor time: time of a clock
   * would be that of whatever else the machine does. What hangs is cut off by the clock.
   */
  private static Outcome<Job> bounded(byte[] bytes, SideFiles files) {
    return assertTimeoutPreemptively(
        Duration.ofSeconds(60),
        () -> {
          var threads = ManagementFactory.getThreadMXBean();
          long start = threads.getCurrentThreadCpuTime();
          Outcome<Job> o = ReaderCase.read("job.yaml", bytes, files);
          assertFalse(ReaderCase.said(o).isEmpty());
          long ms = (threads.getCurrentThreadCpuTime() - start) / 1_000_000;
          assertTrue(ms < 3000, ms + " ms");
          return o;
        });
  }
}
