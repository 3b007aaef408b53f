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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Job files that once made the program fall over, and others like them: each is drawn or refused at
 * its place, and {@code check} and {@code draw} agree. {@link MutationCampaign} finds more.
 */
class MutatedJobsTest {
  private static final Path FOLDER = Path.of("src/test/resources/headcourse/mutated");
  private static final long INPUTS = 60;

  @TempDir Path folder;

  static Stream<String> files() throws IOException {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all
          .map(p -> p.getFileName().toString())
          .filter(f -> f.endsWith(".yaml"))
          .sorted()
          .toList()
          .stream();
    }
  }

  private String said = "";

  private int run(String command, String file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
    int status = Main.run(List.of(command, file), folder, print, print);
    said = out.toString(StandardCharsets.UTF_8);
    return status;
  }

  @ParameterizedTest
  @MethodSource("files")
  void checkAndDrawAgree(String file) throws IOException {
    Files.copy(FOLDER.resolve(file), folder.resolve(file));
    String yard = file.replace(".yaml", ".csv");
    if (Files.exists(FOLDER.resolve(yard))) {
      Files.copy(FOLDER.resolve(yard), folder.resolve(yard));
    }
    int check = run("check", file);
    assertTrue(check != Main.MACHINE, said);
    assertTrue(check != Main.WRONG || said.startsWith(file + ":"), said);
    assertEquals(check, run("draw", file), said);
  }

  @Test
  void fewMutatedJobs() throws Exception {
    assertTrue(MutationCampaign.holds(INPUTS, 77_000), "see target/mutation");
  }
}
