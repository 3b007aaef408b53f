package headcourse.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import headcourse.diag.Diagnostic;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Manual page and completion say what the program takes; the second in a shell of its own. */
class ShippedTextsTest {
  private static final Pattern OPTION = Pattern.compile("--[a-z]+");

  @TempDir Path folder;

  /** The page as a reader sees it, without the signs of man(7). */
  private static String read(String page) {
    return page.replaceAll("(?m)^\\.(B|SH|TP|PP|br|TH) ?", "").replace("\\-", "-");
  }

  @Test
  void everyCommandAndOptionStandsInTheManual() {
    String page = Manual.page("9.9.9");
    assertTrue(page.startsWith(".TH HEADCOURSE 1 \"\" \"headcourse 9.9.9\""), page);
    for (String command : Arguments.COMMANDS) {
      int from = page.indexOf("\n.SH headcourse " + command + "\n");
      assertTrue(from > 0, command);
      int to = page.indexOf("\n.SH ", from + 1);
      String part = read(page.substring(from, to));
      String flowed = part.replaceAll("\\s+", " ");
      for (String line : Help.of(command).lines().toList()) {
        for (String piece : line.strip().split(" {2,}")) {
          assertTrue(flowed.contains(piece), command + ": " + piece);
        }
      }
    }
    for (Option o : Option.values()) {
      String entry = "\n.TP\n.B " + o.word().replace("-", "\\-");
      assertTrue(page.contains(entry + (o.value().isEmpty() ? "\n" : " " + o.value())), o.word());
    }
  }

  /** watch takes those of draw, as its first line says. */
  @Test
  void theHelpOfACommandNamesItsOptionsAndNoOthers() {
    for (String command : Arguments.COMMANDS) {
      if (!command.equals("watch")) {
        Matcher m = OPTION.matcher(Help.of(command));
        List<String> named = new ArrayList<>(m.results().map(r -> r.group()).distinct().toList());
        named.add(Option.HELP.word());
        List<String> taken = Option.of(command).stream().map(Option::word).toList();
        assertEquals(taken.stream().sorted().toList(), named.stream().sorted().toList(), command);
      }
    }
    assertEquals(Option.of("draw"), Option.of("watch"));
    assertTrue(Help.of("watch").contains("[options of draw]"));
  }

  /** Formatted by the system's own formatter, where there is one, without a complaint. */
  @Test
  void theManualIsInOrder() throws Exception {
    assumeTrue(there("groff"), "no groff here");
    Path page = Files.writeString(folder.resolve("headcourse.1"), Manual.page("9.9.9"));
    String said = run("groff", "-man", "-Tascii", "-ww", "-z", page.toString());
    assertEquals("", said);
  }

  private static boolean there(String program) {
    return Stream.of(System.getenv("PATH").split(":"))
        .anyMatch(p -> Files.isExecutable(Path.of(p, program)));
  }

  private String run(String... command) throws IOException, InterruptedException {
    Process p =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
    p.getOutputStream().close();
    String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    p.waitFor();
    return said;
  }

  private List<String> offered(String... typed) throws IOException, InterruptedException {
    String script =
        "source ./completion; COMP_WORDS=(headcourse \"$@\"); COMP_CWORD=$#; _headcourse;"
            + " printf '%s\\n' \"${COMPREPLY[@]}\"";
    List<String> command = new ArrayList<>(List.of("bash", "-c", script, "bash"));
    command.addAll(List.of(typed));
    return run(command.toArray(String[]::new)).lines().sorted().toList();
  }

  @Test
  void bashCompletes() throws Exception {
    assumeTrue(there("bash"), "no bash here");
    Files.writeString(folder.resolve("completion"), Completion.bash());
    Files.writeString(folder.resolve("mill.yaml"), "");
    Files.writeString(folder.resolve("my barn.yml"), "");
    Files.writeString(folder.resolve("letter.pdf"), "");
    Files.createDirectory(folder.resolve("jobs"));
    assertEquals(List.of("check", "choose"), offered("ch"));
    List<String> all = new ArrayList<>(Arguments.COMMANDS);
    all.addAll(List.of("--help", "--version"));
    assertEquals(all.stream().sorted().toList(), offered(""));
    assertEquals(List.of("jobs", "mill.yaml", "my barn.yml"), offered("draw", ""));
    assertEquals(List.of("jobs", "letter.pdf"), offered("form", ""));
    assertEquals(List.of(""), offered("rules", ""));
    assertEquals(List.of("--only", "--open", "--opening", "--out"), offered("draw", "a", "--o"));
    assertEquals(List.of("--help"), offered("check", "--"));
    assertEquals(List.of("tabloid"), offered("form", "--paper", "t"));
    assertEquals(List.of("bench,wall"), offered("draw", "a", "--only", "bench,w"));
    assertEquals(List.of("jobs"), offered("draw", "a", "--out", ""));
  }

  @Test
  void anOptionOfAnotherCommandIsRefused() {
    List<Diagnostic> faults = new ArrayList<>();
    Arguments.parse(List.of("check", "a.yaml", "--only", "wall"), faults);
    assertEquals(1, faults.size());
    assertEquals("check has no option --only", faults.get(0).message());
  }
}
