package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
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

/** The commands that the README lists, run one after the other as a new user would. */
class ReadmeTest {
  private static final Pattern LISTED =
      Pattern.compile("(?m)^target/headcourse ([a-z]+)((?: [^ #\\n]+)*) *#");

  @TempDir Path folder;

  @Test
  void everyListedCommandRuns() throws IOException {
    List<String> listed = new ArrayList<>();
    Matcher m = LISTED.matcher(Files.readString(Path.of("README.md")));
    while (m.find()) {
      listed.add(m.group(1));
      List<String> args = new ArrayList<>(List.of(m.group(1)));
      for (String a : m.group(2).strip().split(" ")) {
        if (!a.isEmpty()) {
          args.add(a);
        }
      }
      ByteArrayOutputStream err = new ByteArrayOutputStream();
      PrintStream to = new PrintStream(err, true, StandardCharsets.UTF_8);
      boolean goesOn = List.of("watch", "page").contains(m.group(1));
      if (goesOn) {
        // Until it is told to end, here at once.
        Thread.currentThread().interrupt();
      }
      int status =
          Main.run(
              args,
              folder,
              new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
              to);
      boolean ended = Thread.interrupted();
      assertEquals(goesOn, ended, args::toString);
      assertEquals(0, status, () -> args + "\n" + err.toString(StandardCharsets.UTF_8));
    }
    for (String command : Arguments.COMMANDS) {
      assertTrue(listed.contains(command), command + " is not in the README");
      assertTrue(Help.of(command).startsWith("headcourse " + command), command);
    }
    assertTrue(Files.exists(folder.resolve("out/my-job/index.html")));
    assertTrue(Files.exists(folder.resolve("measuring-sheet.pdf")));
  }
}
