package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All files together or none, wherever a run stops. */
class OutputFolderTest {
  private static final Predicate<String> OURS = n -> n.startsWith("elevation-");
  private static final Map<String, String> OLD =
      Map.of("a.pdf", "old", "elevation-D1.svg", "old", "elevation-D9.svg", "old");
  private static final Map<String, String> NEW = Map.of("a.pdf", "new", "elevation-D1.svg", "new");
  private static final Map<String, String> USERS =
      Map.of("photo.jpg", "mine", "notes/site.txt", "mine too", ".hidden", "mine as well");

  @TempDir Path parent;
  private Path folder;

  @BeforeEach
  void oldSet() throws IOException {
    folder = parent.resolve("barn");
    write(OLD);
    write(USERS);
  }

  private void write(Map<String, String> files) throws IOException {
    for (var e : files.entrySet()) {
      Path p = folder.resolve(e.getKey());
      Files.createDirectories(p.getParent());
      Files.writeString(p, e.getValue());
    }
  }

  private static Map<String, Content> set(Map<String, String> files) {
    Map<String, Content> contents = new TreeMap<>();
    files.forEach((n, t) -> contents.put(n, Scratch.of(t.getBytes(StandardCharsets.UTF_8))));
    return contents;
  }

  /** All that is in the parent, by path; folders end in a stroke. */
  private Map<String, String> there() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(parent)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        files.put(parent.relativize(p).toString().replace('\\', '/'), Files.readString(p));
      }
    }
    return files;
  }

  @SafeVarargs
  private static Map<String, String> barn(Map<String, String>... sets) {
    Map<String, String> all = new TreeMap<>();
    for (Map<String, String> s : sets) {
      s.forEach((n, t) -> all.put("barn/" + n, t));
    }
    return all;
  }

  @Test
  void replacesTheSetAndKeepsWhatIsTheUsers() throws IOException {
    new OutputFolder(folder, OURS).replace(set(NEW), true);
    assertEquals(barn(NEW, USERS), there());
  }

  @Test
  void aPartOfTheSetLeavesTheRest() throws IOException {
    new OutputFolder(folder, OURS).replace(set(Map.of("a.pdf", "new")), false);
    assertEquals(barn(OLD, USERS, Map.of("a.pdf", "new")), there());
  }

  @Test
  void aLinkToAFolderElsewhereStaysOne() throws IOException {
    Path link = parent.resolve("link");
    try {
      Files.createSymbolicLink(link, folder);
    } catch (IOException | UnsupportedOperationException e) {
      return; // Not every system lets one.
    }
    new OutputFolder(link, OURS).replace(set(NEW), true);
    assertTrue(Files.isSymbolicLink(link));
    assertEquals(barn(NEW, USERS), there());
  }

  @Test
  void aFileInTheWayIsNamed() throws IOException {
    Path file = Files.writeString(parent.resolve("shed"), "mine");
    IOException e =
        assertThrows(IOException.class, () -> new OutputFolder(file, OURS).replace(set(NEW), true));
    assertTrue(JobFile.reason(e).startsWith("shed is in the way"), JobFile.reason(e));
    assertEquals("mine", Files.readString(file));
  }

  /** A disk that stops at a step. */
  private static final class Stopping implements Disk {
    private int left;
    private final boolean killed;
    private boolean stopped;

    Stopping(int steps, boolean killed) {
      this.left = steps;
      this.killed = killed;
    }

    private void step() throws IOException {
      // A disk that fails does so once; one that is full lets one delete and rename.
      if (left-- == 0) {
        stopped = true;
        if (killed) {
          throw new Killed();
        }
        throw new IOException("no space left");
      }
    }

    @Override
    public void folder(Path path) throws IOException {
      step();
      Disk.super.folder(path);
    }

    @Override
    public void write(Path path, Content content) throws IOException {
      if (left == 0) {
        Files.write(path, new byte[] {'x'});
      }
      step();
      Disk.super.write(path, content);
    }

    @Override
    public void settle(Path folder) {
      assertTrue(Files.exists(folder));
    }

    @Override
    public void link(Path file, Path name) throws IOException {
      step();
      Disk.super.link(file, name);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
      step();
      Disk.super.move(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
      step();
      Disk.super.delete(path);
    }
  }

  private static final class Killed extends Error {
    private static final long serialVersionUID = 1;
  }

  private void anew() throws IOException {
    Files.walk(parent)
        .sorted((a, b) -> b.compareTo(a))
        .filter(p -> !p.equals(parent))
        .forEach(p -> assertTrue(p.toFile().delete()));
    oldSet();
  }

  @Test
  void killedAtAnyStepTheNextRunFindsOneSetWhole() throws IOException {
    int news = 0;
    int olds = 0;
    int missing = 0;
    for (int step = 0; ; step++) {
      anew();
      Stopping disk = new Stopping(step, true);
      try {
        new OutputFolder(folder, OURS, disk).replace(set(NEW), true);
      } catch (Killed e) {
        assertTrue(disk.stopped);
      }
      if (!disk.stopped) {
        break;
      }
      if (Files.exists(folder)) {
        boolean fresh = Files.readString(folder.resolve("a.pdf")).equals("new");
        Map<String, String> now = there();
        now.keySet().removeIf(n -> !n.startsWith("barn/"));
        assertEquals(fresh ? barn(NEW, USERS) : barn(OLD, USERS), now, "at step " + step);
      } else {
        missing++;
      }
      new OutputFolder(folder, OURS).recover();
      boolean fresh = Files.readString(folder.resolve("a.pdf")).equals("new");
      assertEquals(fresh ? barn(NEW, USERS) : barn(OLD, USERS), there(), "at step " + step);
      news += fresh ? 1 : 0;
      olds += fresh ? 0 : 1;
    }
    // Only between the two renames is the folder not there, and then the new set is complete.
    assertEquals(1, missing);
    assertTrue(news > 3 && olds > 8, news + " " + olds);
  }

  @Test
  void aRunThatIsKilledWhileItCleansUpIsCleanedUpAfter() throws IOException {
    for (int first = 0; first < 30; first++) {
      for (int second = 0; second < 10; second += 3) {
        anew();
        kill(first);
        kill(second);
        new OutputFolder(folder, OURS).recover();
        boolean fresh = Files.readString(folder.resolve("a.pdf")).equals("new");
        assertEquals(fresh ? barn(NEW, USERS) : barn(OLD, USERS), there(), first + " " + second);
      }
    }
  }

  private void kill(int step) throws IOException {
    try {
      new OutputFolder(folder, OURS, new Stopping(step, true)).replace(set(NEW), true);
    } catch (Killed e) {
      assertTrue(Files.exists(parent));
    }
  }

  @Test
  void aDiskThatFailsAtAnyStepLeavesTheOldSetOrHasPlacedTheNew() throws IOException {
    for (int step = 0; ; step++) {
      anew();
      Stopping disk = new Stopping(step, false);
      boolean failed = false;
      try {
        new OutputFolder(folder, OURS, disk).replace(set(NEW), true);
      } catch (IOException e) {
        failed = true;
      }
      if (!disk.stopped) {
        break;
      }
      Map<String, String> now = there();
      now.keySet().removeIf(n -> !n.startsWith("barn/"));
      assertEquals(failed ? barn(OLD, USERS) : barn(NEW, USERS), now, "at step " + step);
      new OutputFolder(folder, OURS).recover();
      assertEquals(failed ? barn(OLD, USERS) : barn(NEW, USERS), there(), "at step " + step);
    }
  }

  @Test
  void whatAnotherProgramSavesMeanwhileIsKept() throws IOException {
    Disk disk =
        new Disk() {
          @Override
          public void move(Path from, Path to) throws IOException {
            if (to.getFileName().toString().equals(".barn.new")) {
              Files.writeString(folder.resolve("late.txt"), "mine");
              Files.delete(folder.resolve("photo.jpg"));
              Files.writeString(folder.resolve("photo.jpg"), "mine, retouched");
              Files.setLastModifiedTime(
                  folder.resolve("photo.jpg"), FileTime.fromMillis(4_000_000_000_000L));
            }
            Disk.super.move(from, to);
          }
        };
    new OutputFolder(folder, OURS, disk).replace(set(NEW), true);
    assertEquals(
        barn(NEW, USERS, Map.of("late.txt", "mine", "photo.jpg", "mine, retouched")), there());
  }

  @Test
  void twoAtOnceAreOneAfterTheOther() throws Exception {
    ExecutorService hands = Executors.newFixedThreadPool(4);
    try {
      Stream<Future<?>> runs =
          Stream.iterate(0, i -> i + 1)
              .limit(16)
              .map(
                  i ->
                      hands.submit(
                          () -> {
                            String text = "set " + i;
                            new OutputFolder(folder, OURS)
                                .replace(set(Map.of("a.pdf", text, "b.pdf", text)), true);
                            return null;
                          }));
      for (Future<?> f : runs.toList()) {
        f.get();
      }
    } finally {
      hands.shutdown();
    }
    Map<String, String> now = there();
    assertEquals(now.get("barn/a.pdf"), now.get("barn/b.pdf"));
    assertEquals(5, now.size(), now.toString());
  }
}
