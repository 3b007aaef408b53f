package headcourse.testing;

import static java.nio.charset.StandardCharsets.UTF_8;

import headcourse.job.yaml.JobReader;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The jobs of {@code jobs/}, with the files that they name beside them. */
public final class DemoJobs {
  private static final Path FOLDER = Path.of("jobs");

  private DemoJobs() {}

  /** Their names, as in {@code cart-door}. */
  public static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(".yaml"))
          .map(f -> f.substring(0, f.length() - 5))
          .sorted()
          .toList();
    }
  }

  /** One of them worked out. */
  public static ShopWork work(String name) throws IOException {
    return work(name, Files.readAllBytes(FOLDER.resolve(name + ".yaml")));
  }

  /** One of them worked out for other paper and another language. */
  public static ShopWork work(String name, String paper, String language) throws IOException {
    String text = Files.readString(FOLDER.resolve(name + ".yaml"));
    String other = "paper: " + paper + "\nlanguage: " + language;
    return work(name, text.replaceFirst("(?m)^paper:.*", other).getBytes(UTF_8));
  }

  private static ShopWork work(String name, byte[] text) {
    var read =
        JobReader.read(
            name + ".yaml", text, Shapes.definitions(), RuleBook.limits(), DemoJobs::beside);
    return WorkUp.of(read.value().orElseThrow(), DemoJobs::beside).value().orElseThrow();
  }

  // From jobs/ where the file lies there, else from where the tests run.
  private static Optional<byte[]> beside(String name) {
    try {
      Path file = FOLDER.resolve(name);
      Path found = Files.exists(file) ? file : Path.of(name);
      return Files.exists(found) ? Optional.of(Files.readAllBytes(found)) : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
