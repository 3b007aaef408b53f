package headcourse.benchmarks;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How soon the head is drawn anew on the local page while a width is typed: the program in a
 * process of its own, asked over HTTP as the page asks it. Prints median and 95th of a hundred for
 * each demo job, warm.
 */
final class PageBenchmark {
  private static final int WARM = 40;
  private static final int MEASURED = 100;

  private PageBenchmark() {}

  public static void main(String[] args) throws Exception {
    List<String> jobs =
        args.length > 0
            ? List.of(args)
            : List.of("cart-door", "courtyard-windows", "forge-arch", "chapel-arches");
    for (String job : jobs) {
      Path folder = Files.createTempDirectory("page");
      Files.copy(Path.of("jobs", job + ".yaml"), folder.resolve("job.yaml"));
      Process program =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-XX:+UseSerialGC",
                  "-cp",
                  absolute(System.getProperty("java.class.path")),
                  "headcourse.cli.Main",
                  "page",
                  "job.yaml")
              .directory(folder.toFile())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      try (BufferedReader out =
          new BufferedReader(
              new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
        measure(job, URI.create(out.readLine()));
      } finally {
        program.destroy();
      }
    }
  }

  private static String absolute(String path) {
    return String.join(
        java.io.File.pathSeparator,
        Arrays.stream(path.split(java.io.File.pathSeparator))
            .map(p -> Path.of(p).toAbsolutePath().toString())
            .toList());
  }

  private static void measure(String job, URI page) throws Exception {
    HttpClient client = HttpClient.newHttpClient();
    String origin = page.getScheme() + "://" + page.getAuthority();
    double[] took = new double[MEASURED];
    for (int i = -WARM; i < MEASURED; i++) {
      String title = URLEncoder.encode("typed " + i, StandardCharsets.UTF_8);
      HttpRequest ask =
          HttpRequest.newBuilder(page.resolve("picture"))
              .header("Origin", origin)
              .POST(BodyPublishers.ofString("opening=0&set.openings[0].label=" + title))
              .build();
      long from = System.nanoTime();
      String svg = client.send(ask, BodyHandlers.ofString()).body();
      if (!svg.contains("<svg ")) {
        throw new IllegalStateException(svg);
      }
      if (i >= 0) {
        took[i] = (System.nanoTime() - from) / 1e6;
      }
    }
    Arrays.sort(took);
    System.out.printf(
        Locale.ROOT,
        "%s: %.0f ms, 95th %.0f ms%n",
        job,
        took[MEASURED / 2],
        took[MEASURED * 95 / 100]);
  }
}
