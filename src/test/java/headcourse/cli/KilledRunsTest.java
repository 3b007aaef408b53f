package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program in processes of its own, killed, two at once, on a disk that is full or shut: a job's
 * folder holds the old set or the new one, whole, and the user's own files.
 */
class KilledRunsTest {
  private static final int KILLS = Integer.getInteger("headcourse.kills", 4);
  private static final long SEED = 20261130;
  private static final String JOB =
      """
      job: {title: TITLE}
      units: in
      stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
      openings:
        - {mark: D1, width: 8'}
      """;

  @TempDir Path folder;
  private Path target;

  @BeforeEach
  void jobs() throws IOException {
    target = folder.resolve("out/barn");
    for (String set : List.of("one", "two")) {
      Files.createDirectories(folder.resolve(set));
      Files.writeString(folder.resolve(set + "/barn.yaml"), JOB.replace("TITLE", "Barn " + set));
    }
  }

  private ProcessBuilder command(String... args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp"));
    command.add(
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .map(p -> Path.of(p).toAbsolutePath().toString())
            .collect(Collectors.joining(File.pathSeparator)));
    command.add("headcourse.cli.Main");
    command.addAll(List.of(args));
    return new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectOutput(folder.resolve("stdout").toFile())
        .redirectError(folder.resolve("stderr").toFile());
  }

  private int run(String... args) throws IOException, InterruptedException {
    return command(args).start().waitFor();
  }

  private int draw(String set) throws IOException, InterruptedException {
    return run("draw", set + "/barn.yaml");
  }

  /** The same in this process, which is faster. */
  private void drawn(String set) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
    int status = Main.run(List.of("draw", set + "/barn.yaml"), folder, out, out);
    assertEquals(Main.DONE, status, said.toString(StandardCharsets.UTF_8));
  }

  private String err() throws IOException {
    return Files.readString(folder.resolve("stderr"));
  }

  private static Map<String, String> files(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path p : all.filter(Files::isRegularFile).toList()) {
          String name = folder.relativize(p).toString();
          files.put(name, Integer.toHexString(Arrays.hashCode(Files.readAllBytes(p))));
        }
      }
    }
    return files;
  }

  private List<String> beside() throws IOException {
    try (Stream<Path> all = Files.list(target.getParent())) {
      return all.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  /** Both sets, each with the user's files; the second is in place. */
  private List<Map<String, String>> sets() throws IOException, InterruptedException {
    Files.createDirectories(target.resolve("notes"));
    Files.writeString(target.resolve("photo.jpg"), "mine");
    Files.writeString(target.resolve("notes/site.txt"), "mine too");
    drawn("one");
    Map<String, String> one = files(target);
    drawn("two");
    Map<String, String> two = files(target);
    assertEquals(one.keySet(), two.keySet());
    assertTrue(!one.equals(two) && one.size() > 9);
    return List.of(one, two);
  }

  @Test
  void killedAtAnyMomentASetIsWhole() throws Exception {
    List<Map<String, String>> sets = sets();
    Random random = new Random(SEED);
    long from = System.nanoTime();
    draw("two");
    final long whole = System.nanoTime() - from;
    int ended = 0;
    for (int i = 0; i < KILLS; i++) {
      Map<String, String> before = files(target);
      int next = sets.indexOf(before) == 0 ? 1 : 0;
      Process p = command("draw", next == 0 ? "one/barn.yaml" : "two/barn.yaml").start();
      boolean gently = random.nextInt(4) == 0;
      if (random.nextInt(3) == 0) {
        p.waitFor(random.nextLong(whole), TimeUnit.NANOSECONDS);
      } else {
        // The moments that matter are those in which files are placed.
        Path part = target.resolveSibling(".barn.part");
        while (p.isAlive() && !Files.exists(part)) {
          Thread.onSpinWait();
        }
        p.waitFor(random.nextLong(40_000_000), TimeUnit.NANOSECONDS);
      }
      if (gently) {
        p.destroy();
      } else {
        p.destroyForcibly();
      }
      ended += p.waitFor() == 0 ? 1 : 0;
      String when = "kill " + i + (gently ? ", told to end" : "");
      Map<String, String> after = files(target);
      boolean between = !Files.exists(target);
      assertTrue(between && !gently || sets.contains(after), when + ": " + after.keySet());
      if (gently) {
        assertEquals(List.of("barn"), beside(), when);
      }
      drawn(next == 0 ? "one" : "two");
      assertEquals(sets.get(next), files(target), when);
      assertEquals(List.of("barn"), beside(), when);
    }
    System.out.println(KILLS + " runs killed, of which " + ended + " had ended");
  }

  @Test
  void twoAtOnceLeaveOneSetWhole() throws Exception {
    List<Map<String, String>> sets = sets();
    Process one = command("draw", "one/barn.yaml").start();
    Process two = command("draw", "two/barn.yaml").start();
    assertEquals(Main.DONE, one.waitFor(), err());
    assertEquals(Main.DONE, two.waitFor(), err());
    assertTrue(sets.contains(files(target)));
    assertEquals(List.of("barn"), beside());
  }

  @Test
  void aFileOpenElsewhereIsReadToItsEndAsItWas() throws Exception {
    List<Map<String, String>> sets = sets();
    Path bench = target.resolve("bench.pdf");
    byte[] before = Files.readAllBytes(bench);
    int status;
    byte[] read;
    try (InputStream in = Files.newInputStream(bench)) {
      byte[] first = in.readNBytes(1000);
      status = draw("one");
      read = new byte[before.length];
      System.arraycopy(first, 0, read, 0, first.length);
      assertEquals(
          before.length - first.length,
          in.readNBytes(read, first.length, read.length - first.length));
    }
    assertArrayEquals(before, read);
    // A system that holds a folder while a file in it is open has it refused.
    assertTrue(status == Main.DONE || status == Main.MACHINE && !err().isBlank());
    assertEquals(sets.get(status == Main.DONE ? 0 : 1), files(target));
  }

  @Test
  void aFileWhereAFolderShouldBeStays() throws Exception {
    Files.createDirectories(target.getParent());
    Files.writeString(target, "mine");
    assertEquals(Main.MACHINE, draw("one"));
    assertTrue(err().contains("barn is in the way; rename it"), err());
    assertEquals("mine", Files.readString(target));
    assertEquals(List.of("barn"), beside());
    Files.writeString(folder.resolve("shed"), "mine");
    assertEquals(Main.MACHINE, run("draw", "one/barn.yaml", "--out", "shed"));
    assertTrue(err().contains("shed is in the way; rename it"), err());
    assertEquals("mine", Files.readString(folder.resolve("shed")));
  }

  private void refusedAndWhole(Map<String, String> before, String words) throws Exception {
    assertTrue(err().contains(words) && err().contains("nothing changed"), err());
    assertTrue(!err().contains("\tat "), err());
    assertEquals(before, files(target));
    assertEquals(List.of("barn"), beside());
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aFileThatMayNotGrowLeavesTheOldSet() throws Exception {
    List<Map<String, String>> sets = sets();
    ProcessBuilder limited = command("draw", "one/barn.yaml");
    List<String> command = new ArrayList<>(List.of("sh", "-c", "ulimit -f 100; exec \"$@\"", "sh"));
    command.addAll(limited.command());
    assertEquals(Main.MACHINE, limited.command(command).start().waitFor(), err());
    refusedAndWhole(sets.get(1), "can't write");
  }

  private static boolean done(String... command) throws IOException, InterruptedException {
    try {
      return new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException e) {
      return false;
    }
  }

  private interface Mounted {
    void run() throws Exception;
  }

  private void mounted(String options, Mounted test) throws Exception {
    String at = folder.resolve("out").toString();
    Files.createDirectories(folder.resolve("out"));
    assumeTrue(
        done("mount", "-t", "tmpfs", "-o", options, "tmpfs", at), "no file system can be mounted");
    try {
      test.run();
    } finally {
      assertTrue(done("umount", at));
    }
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void onAFullDiskTheOldSetStays() throws Exception {
    drawn("one");
    long size = 0;
    try (Stream<Path> set = Files.list(target)) {
      for (Path p : set.toList()) {
        size += Files.size(p);
      }
    }
    byte[] fill = new byte[(int) size / 2];
    mounted(
        "size=" + size * 5 / 2,
        () -> {
          List<Map<String, String>> sets = sets();
          Files.write(target.resolve("fill"), fill);
          Files.write(target.resolve("fill2"), fill);
          Map<String, String> before = files(target);
          assertEquals(Main.MACHINE, draw("one"));
          refusedAndWhole(before, "No space left");
          assertTrue(before.keySet().containsAll(sets.get(1).keySet()));
        });
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void onADiskThatIsShutTheOldSetStays() throws Exception {
    mounted(
        "size=8m",
        () -> {
          List<Map<String, String>> sets = sets();
          assertTrue(done("mount", "-o", "remount,ro", folder.resolve("out").toString()));
          assertEquals(Main.MACHINE, draw("one"));
          refusedAndWhole(sets.get(1), "Read-only file system");
        });
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void whereOneMayNotWriteTheOldSetStays() throws Exception {
    List<Map<String, String>> sets = sets();
    assertTrue(target.getParent().toFile().setWritable(false));
    try {
      assumeTrue(!Files.isWritable(target.getParent()), "this user may write everywhere");
      assertEquals(Main.MACHINE, draw("one"));
      refusedAndWhole(sets.get(1), "permission denied");
    } finally {
      assertTrue(target.getParent().toFile().setWritable(true));
    }
  }
}
