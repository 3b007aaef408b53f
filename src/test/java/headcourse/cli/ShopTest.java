package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Job;
import headcourse.units.Length;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What all jobs of a shop share, laid under each. */
class ShopTest {
  private static final String SHARED =
      """
      job: {mason: R. Mason}
      stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
      setting: {care: careful}
      tools: {saw: {kerf: 3/32}}
      limits: {thrust: 3}
      """;

  private static final String OWN = "openings: [{mark: D1, width: 6'}]\n";

  @TempDir Path folder;
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    err.reset();
    return Main.run(
        List.of(args),
        folder,
        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private void write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private Job read(String name) {
    return new JobFile(folder, name).read().value().orElseThrow();
  }

  @Test
  void aJobHoldsOnlyWhatIsItsOwn() throws IOException {
    write("jobs/shop.yaml", SHARED);
    write("jobs/barn.yaml", "job: {title: Barn}\nsetting: {cut-tolerance: 1/64}\n" + OWN);
    Job job = read("jobs/barn.yaml");
    assertEquals("R. Mason", job.info().mason());
    assertEquals("Barn", job.info().title());
    assertEquals(Length.inches(1.25), job.stone().thickness());
    assertEquals(Length.inches(3 / 32.0), job.tools().saw().kerf());
    assertEquals("careful", job.setting().care().name());
    assertEquals(Length.inches(1 / 64.0), job.setting().cutTolerance());
    assertEquals(0, run("check", "jobs/barn.yaml"), this::err);
    assertTrue(err().contains("shop.yaml:1:1: note: what this file says"), this::err);
    // The job's own goes before.
    write("jobs/barn.yaml", "job: {mason: me}\ntools: {saw: {kerf: 1/8}}\n" + OWN);
    assertEquals("me", read("jobs/barn.yaml").info().mason());
    assertEquals(Length.inches(1 / 8.0), read("jobs/barn.yaml").tools().saw().kerf());
  }

  /** All of it in one file draws the same. */
  @Test
  void theSameBytesAsInOneFile() throws IOException {
    write("jobs/shop.yaml", SHARED);
    write("jobs/barn.yaml", OWN);
    write("alone/barn.yaml", SHARED + OWN);
    assertEquals(0, run("draw", "jobs/barn.yaml", "--only", "json,csv,svg", "--out", "a"));
    assertEquals(0, run("draw", "alone/barn.yaml", "--only", "json,csv,svg", "--out", "b"));
    for (String f : List.of("layout.json", "cut-list.csv", "elevation-D1.svg")) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("a/barn/" + f)),
          Files.readAllBytes(folder.resolve("b/barn/" + f)),
          f);
    }
  }

  @Test
  void anotherFileThatTheJobNames() throws IOException {
    write("jobs/shop.yaml", SHARED);
    write("jobs/fine.yaml", SHARED.replace("R. Mason", "F. Mason"));
    write("jobs/barn.yaml", "shop: fine.yaml\n" + OWN);
    assertEquals("F. Mason", read("jobs/barn.yaml").info().mason());
    write("jobs/barn.yaml", "shop: none.yaml\n" + OWN);
    assertEquals(2, run("check", "jobs/barn.yaml"));
    assertTrue(err().contains("barn.yaml:1:7: error: there is no file 'none.yaml'"), this::err);
    write("jobs/barn.yaml", "shop: ../secret.yaml\n" + OWN);
    write("secret.yaml", SHARED);
    assertEquals(2, run("check", "jobs/barn.yaml"));
  }

  @Test
  void faultsAreToldInTheFileTheyStandIn() throws IOException {
    write("jobs/shop.yaml", SHARED.replace("3/32", "wide"));
    write("jobs/barn.yaml", OWN);
    assertEquals(2, run("check", "jobs/barn.yaml"));
    assertTrue(err().contains("shop.yaml:4:21: error: 'wide'"), this::err);
    write("jobs/shop.yaml", SHARED + "openings: []\n");
    assertEquals(2, run("check", "jobs/barn.yaml"));
    assertTrue(err().contains("shop.yaml:6:1: error: 'openings' is for a job"), this::err);
    write("jobs/shop.yaml", SHARED.replace("mason:", "title:"));
    assertEquals(2, run("check", "jobs/barn.yaml"));
    assertTrue(err().contains("shop.yaml:1:7: error: 'title' is of one job"), this::err);
    write("jobs/shop.yaml", SHARED.replace("sandstone,", "sandstone"));
    assertEquals(2, run("check", "jobs/barn.yaml"));
    assertTrue(err().contains("shop.yaml:"), this::err);
  }

  @Test
  void unitsAreNotMixed() throws IOException {
    write("jobs/shop.yaml", SHARED);
    write("jobs/barn.yaml", "units: mm\nopenings: [{width: 1800}]\n");
    assertEquals(2, run("check", "jobs/barn.yaml"));
    assertTrue(err().contains("the shop's lengths are in in, the job's in mm"), this::err);
    write("jobs/shop.yaml", "units: mm\nstone: {thickness: 30}\n");
    write("jobs/barn.yaml", "openings: [{width: 1800}]\n");
    assertEquals(Length.mm(1800), read("jobs/barn.yaml").openings().get(0).width());
  }

  @Test
  void theShopItselfIsNoJobOfItsOwn() throws IOException {
    write("shop.yaml", SHARED + OWN);
    assertEquals(0, run("check", "shop.yaml"), this::err);
    assertFalse(err().contains("note: what this file"), this::err);
  }
}
