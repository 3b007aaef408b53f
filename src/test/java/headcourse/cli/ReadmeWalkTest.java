package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README's walk-through, walked: each file written, each command run, each answer given. */
class ReadmeWalkTest {
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(yaml)?\n(.*?)^```$");
  private static final String COMMAND = "headcourse ";

  @TempDir Path folder;

  private String walk() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    int from = readme.indexOf("## Ten minutes");
    return readme.substring(from, readme.indexOf("\n## ", from));
  }

  @Test
  void everyStepDoesWhatIsSaid() throws IOException {
    Path job = folder.resolve("jobs/garden-door.yaml");
    Matcher block = BLOCK.matcher(walk());
    boolean typed = false;
    Set<String> commands = new TreeSet<>();
    while (block.find()) {
      if (block.group(1) == null) {
        commands.addAll(run(block.group(2).lines().toList()));
      } else if (!typed) {
        assertTrue(Files.exists(job), "new has written it");
        Files.writeString(job, block.group(2));
        typed = true;
      } else {
        Files.writeString(job, block.group(2), StandardOpenOption.APPEND);
      }
    }
    assertEquals(Set.of("form", "new", "check", "explain", "draw", "choose"), commands);
    assertTrue(Files.exists(folder.resolve("measuring-sheet.pdf")));
    assertTrue(Files.exists(folder.resolve("out/garden-door/choose.pdf")));
    theBrokenStoneComesFromWhereItIsSaid();
  }

  /** What is said of the stone that broke, and of the others. */
  private void theBrokenStoneComesFromWhereItIsSaid() throws IOException {
    Path list = folder.resolve("out/garden-door/cut-list.csv");
    List<String> before = Files.readAllLines(list);
    run(List.of("headcourse draw jobs/garden-door.yaml"));
    List<String> after = Files.readAllLines(list);
    assertTrue(walk().contains("`C1#5/1`"));
    for (int i = 0; i < before.size(); i++) {
      assertEquals(size(before.get(i)), size(after.get(i)));
    }
    String r3 = after.stream().filter(l -> l.startsWith("D1-R3,")).findFirst().orElseThrow();
    assertTrue(r3.contains(",C1#5/1,"), r3);
  }

  private static String size(String row) {
    String[] cells = row.split(",");
    return cells[0] + " " + cells[7] + " " + cells[8] + " " + cells[9];
  }

  private List<String> run(List<String> lines) {
    List<String> words = new ArrayList<>();
    String said = "";
    for (String line : lines) {
      if (line.startsWith(COMMAND)) {
        List<String> args = List.of(line.substring(COMMAND.length()).split(" "));
        words.add(args.get(0));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
        int status = Main.run(args, folder, to, to);
        said = out.toString(StandardCharsets.UTF_8);
        assertEquals(Main.DONE, status, said);
      } else {
        assertTrue(said.lines().anyMatch(line::equals), line + "\nis not in\n" + said);
      }
    }
    return words;
  }
}
