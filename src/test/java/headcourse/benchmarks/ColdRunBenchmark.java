package headcourse.benchmarks;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Times whole processes: {@code java -jar target/headcourse.jar draw jobs/cart-door.yaml} beside a
 * bare start of the same JVM, in turn, and prints medians and the ratio pair by pair. Run {@code
 * mvn package} first; the argument is the number of pairs.
 */
public final class ColdRunBenchmark {
  private ColdRunBenchmark() {}

  /** Runs it. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int pairs = args.length > 0 ? Integer.parseInt(args[0]) : 11;
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Path out = Files.createTempDirectory("headcourse-cold");
    Path empty = Files.createTempDirectory("headcourse-bare");
    Files.writeString(
        empty.resolve("Bare.java"), "class Bare{public static void main(String[] a){}}");
    run(List.of(java + "c", "-d", empty.toString(), empty.resolve("Bare.java").toString()));
    List<String> bare = List.of(java, "-cp", empty.toString(), "Bare");
    List<String> draw =
        List.of(
            java,
            "-jar",
            "target/headcourse.jar",
            "draw",
            "jobs/cart-door.yaml",
            "--out",
            out.toString());
    double[] a = new double[pairs];
    double[] b = new double[pairs];
    double[] ratio = new double[pairs];
    run(bare);
    run(draw);
    for (int i = 0; i < pairs; i++) {
      a[i] = run(bare);
      b[i] = run(draw);
      ratio[i] = b[i] / a[i];
    }
    System.out.printf(Locale.ROOT, "bare JVM   median %.0f ms%n", median(a));
    System.out.printf(Locale.ROOT, "cart door  median %.0f ms%n", median(b));
    System.out.printf(Locale.ROOT, "ratio      median %.1f%n", median(ratio));
  }

  private static double run(List<String> command) throws IOException, InterruptedException {
    List<String> c = new ArrayList<>(command);
    long start = System.nanoTime();
    Process p =
        new ProcessBuilder(c)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.to(new File("/dev/null")))
            .start();
    p.waitFor();
    return (System.nanoTime() - start) / 1e6;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
