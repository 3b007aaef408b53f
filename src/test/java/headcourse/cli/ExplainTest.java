package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Why this number of stones: each line of the table is tried on the job itself. */
class ExplainTest {
  private static final String JOB =
      """
      stone: {kind: sandstone, density: 138 lb/ft3, thickness: 1 1/4}
      openings:
        - mark: W1
          width: 3'
        - mark: D1
          width: 8'
          head:
            stones:
              rhythm: even
      """;

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String job, String... args) throws IOException {
    Files.writeString(folder.resolve("barn.yaml"), job);
    out.reset();
    err.reset();
    return Main.run(
        List.of(args),
        folder,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private List<String> lines() {
    return out.toString(StandardCharsets.UTF_8).lines().map(String::strip).toList();
  }

  private String summary(String job) throws IOException {
    run(job, "check", "barn.yaml");
    return lines().stream().filter(l -> l.startsWith("D1: soldier")).findFirst().orElse("refused");
  }

  @Test
  void eachLineOfTheTableComesTrueWhenItIsWritten() throws IOException {
    assertEquals(0, run(JOB, "explain", "barn.yaml", "D1"));
    List<String> said = lines();
    assertTrue(said.get(0).startsWith("D1: soldier, "), said::toString);
    assertTrue(said.stream().noneMatch(l -> l.startsWith("W1:")), said::toString);
    List<String> rows = said.stream().filter(l -> l.contains("each-side: ")).toList();
    assertEquals(1, rows.stream().filter(l -> l.startsWith(">")).count());
    assertTrue(rows.size() >= 2, said::toString);
    for (String row : rows) {
      String number = row.substring(row.indexOf("each-side: ") + 11);
      String cells = row.replace("> ", "").strip();
      String then = summary(JOB + "        each-side: " + number + "\n");
      // Key and both sides.
      assertTrue(then.contains(" " + (2 * Integer.parseInt(number) + 1) + " stones"), then);
      String bears = then.replaceAll(".*bears (.*?)\" left.*", "$1");
      assertTrue(cells.contains("  " + bears + "  "), row + " / " + then);
      assertEquals(row.startsWith(">"), then.equals(said.get(0)), then);
    }
    List<String> nots = said.stream().filter(l -> l.startsWith("not ")).toList();
    assertEquals(4, nots.size(), said::toString);
    for (String not : nots) {
      String number = not.replaceAll("not ([0-9]+):.*", "$1");
      String then = summary(JOB + "        each-side: " + number + "\n");
      assertEquals(not.contains("can't be set out"), then.equals("refused"), not);
      if (not.contains("short of landing")) {
        String by = not.replaceAll(".*at the worst it is (.*) short of landing.*", "$1");
        assertTrue(then.contains("at the worst " + by + " short of landing"), not + " / " + then);
      }
    }
  }

  @Test
  void anArchAndAnUnknownMark() throws IOException {
    String arch =
        JOB.replace("rhythm: even", "target: 7")
            .replace("head:\n", "head:\n      shape: segmental\n      rise: 18\n");
    assertEquals(0, run(arch, "explain", "barn.yaml", "D1"), err::toString);
    assertTrue(lines().stream().anyMatch(l -> l.startsWith(">")), out::toString);
    assertEquals(2, run(JOB, "explain", "barn.yaml", "D9"));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("the job's openings are W1, D1"));
    assertEquals(2, run(JOB, "explain"));
  }
}
