package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Errors that teach: what a mason may write, and what he is told, in one table, {@code slips.txt}.
 */
class SlipsTest {
  private static final Path TABLE = Path.of("src/test/resources/headcourse/slips/slips.txt");
  private static final Path NEW = Path.of("src/main/resources/headcourse/new-job.yaml");

  @TempDir Path folder;

  /** What {@code check} says of a file that it refuses; one word where it does not. */
  private String said(String input) throws IOException {
    String[] files = input.split("(?m)^--- ");
    Files.writeString(folder.resolve("job.yaml"), files[0]);
    for (int i = 1; i < files.length; i++) {
      int end = files[i].indexOf('\n');
      Files.writeString(folder.resolve(files[i].substring(0, end)), files[i].substring(end + 1));
    }
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        Main.run(
            List.of("check", "job.yaml"),
            folder,
            new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    String text = err.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    assertEquals(status == Main.WRONG, !text.isEmpty(), text);
    return text.isEmpty() ? "accepted\n" : text;
  }

  @Test
  void theTableSaysWhatIsSaid() throws IOException {
    boolean refresh = Boolean.getBoolean("headcourse.refresh") && System.getenv("CI") == null;
    String table = Files.readString(TABLE);
    String[] cases = table.split("(?m)^=== ");
    StringBuilder fresh = new StringBuilder(cases[0]);
    List<String> wrong = new ArrayList<>();
    for (int i = 1; i < cases.length; i++) {
      int name = cases[i].indexOf('\n') + 1;
      int answer = cases[i].indexOf("\n>>>\n") + 1;
      String said = said(cases[i].substring(name, answer));
      String expected = cases[i].substring(answer + ">>>\n".length()).stripTrailing() + "\n";
      if (!said.equals(expected)) {
        wrong.add(cases[i].substring(0, name) + said);
      }
      fresh.append("=== ").append(cases[i], 0, answer).append(">>>\n").append(said);
      fresh.append(i + 1 < cases.length ? "\n" : "");
    }
    if (refresh) {
      Files.writeString(TABLE, fresh.toString());
      return;
    }
    assertEquals(List.of(), wrong);
    assertTrue(cases.length > 40, "cases were lost");
  }

  @Test
  void moreThanAHundredErrorsAreCounted() throws IOException {
    StringBuilder job = new StringBuilder("stone: {thickness: 1 1/4}\nopenings:\n");
    for (int i = 1; i <= 120; i++) {
      job.append("  - {mark: W").append(i).append(", width: 8', hight: 3'}\n");
    }
    String said = said(job.toString());
    assertEquals(100, said.split("unknown key 'hight'", -1).length - 1);
    assertTrue(
        said.contains(": note: 20 more errors are not shown; mend the first, and read again"));
  }

  /** What a cure says to write is right: it is written, and the file reads. */
  @Test
  void theCuresOfLinesCure() throws IOException {
    String[] cases = Files.readString(TABLE).split("(?m)^=== ");
    Pattern cured =
        Pattern.compile("job\\.yaml:(\\d+):(\\d+): .*\\n.*\\n *(\\^+)\\n  hint: write (.*)\\n");
    int tried = 0;
    for (String c : cases) {
      int answer = c.indexOf("\n>>>\n") + 1;
      Matcher m = cured.matcher(c.substring(answer));
      if (answer == 0 || !m.find()) {
        continue;
      }
      int name = c.indexOf('\n') + 1;
      List<String> lines = new ArrayList<>(List.of(c.substring(name, answer).split("\n")));
      int line = Integer.parseInt(m.group(1)) - 1;
      String cure = m.group(4);
      String key = cure.replaceAll("^([a-z-]+: ).*$", "$1");
      String was = lines.get(line);
      int from = key.equals(cure) ? -1 : was.indexOf(key.substring(0, key.length() - 2));
      int at = from >= 0 ? from : Integer.parseInt(m.group(2)) - 1;
      int end = from < 0 ? at + m.group(3).length() : end(was, from);
      lines.set(line, was.substring(0, at) + cure + was.substring(end));
      String said = said(String.join("\n", lines) + "\n");
      assertEquals("accepted\n", said, () -> String.join("\n", lines));
      tried++;
    }
    assertTrue(tried >= 12, "too few cures were tried: " + tried);
  }

  /** Where the value of a key ends: within braces at the next key. */
  private static int end(String line, int from) {
    int comma = line.indexOf(',', from);
    boolean braces = line.contains("{") && line.indexOf('{') < from;
    return !braces ? line.length() : comma > 0 ? comma : line.lastIndexOf('}');
  }

  /** Whoever reads the file that a job starts from is left with no key unexplained. */
  @Test
  void everyLineOfANewJobIsExplained() throws IOException {
    for (String line : Files.readAllLines(NEW)) {
      assertTrue(line.isBlank() || line.contains("# "), line);
    }
  }
}
