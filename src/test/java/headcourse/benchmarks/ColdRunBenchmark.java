package headcourse.benchmarks;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Times whole processes in turn: a bare start of the JVM, and a drawing of the cart door, all
 * outputs, or with {@code choose} as a second argument what there is to choose from over a 40-ft
 * opening with a range of keys, by the launcher and by {@code java -jar}. Prints medians of the
 * time and of the processor's time, their ratios to the bare start pair by pair, and the most
 * memory held. Run {@code mvn package} first; the first argument is the number of rounds. Linux
 * only.
 */
public final class ColdRunBenchmark {
  private static final String WIDE =
      """
      stone: {density: 138 lb/ft3, thickness: 1 1/4}
      openings:
        - mark: D1
          width: 40'
          vary: {key: {bottom: 6..12}}
          head:
            key: {bottom: 8, top: 11, rise: 2, drop: 1, proud: 1/2}
            stones: {min: 5, max: 8 1/2, target: 7}
            bearing: {min: 4, max: 8, target: 6}
      stock:
        corners:
          - {mark: C1, arris: 24, face: 16, return: 5, count: 60}
      """;

  private ColdRunBenchmark() {}

  private record Run(double wall, double cpu, double megabytes) {}

  /** Runs it. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 11;
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Path out = Files.createTempDirectory("headcourse-cold");
    Path empty = Files.createTempDirectory("headcourse-bare");
    Files.writeString(
        empty.resolve("Bare.java"), "class Bare{public static void main(String[] a){}}");
    run(List.of(java + "c", "-d", empty.toString(), empty.resolve("Bare.java").toString()));
    boolean choose = args.length > 1 && args[1].equals("choose");
    Path wide = Files.writeString(out.resolve("wide.yaml"), WIDE);
    List<String> draw =
        choose
            ? List.of("choose", wide.toString(), "--out", out.toString())
            : List.of("draw", "jobs/cart-door.yaml", "--out", out.toString());
    List<List<String>> commands =
        List.of(
            List.of(java, "-cp", empty.toString(), "Bare"),
            joined(List.of("target/headcourse"), draw),
            joined(List.of(java, "-jar", "target/headcourse.jar"), draw));
    List<String> names = List.of("bare JVM", "launcher", "java -jar");
    Run[][] runs = new Run[commands.size()][rounds];
    for (List<String> command : commands) {
      // The launcher's first run makes its archive.
      run(command);
    }
    for (int i = 0; i < rounds; i++) {
      for (int k = 0; k < commands.size(); k++) {
        runs[k][i] = run(commands.get(k));
      }
    }
    for (int k = 0; k < commands.size(); k++) {
      double[] wall = new double[rounds];
      double[] cpu = new double[rounds];
      double[] ratio = new double[rounds];
      double[] worked = new double[rounds];
      double[] memory = new double[rounds];
      for (int i = 0; i < rounds; i++) {
        wall[i] = runs[k][i].wall;
        cpu[i] = runs[k][i].cpu;
        ratio[i] = wall[i] / runs[0][i].wall;
        worked[i] = cpu[i] / runs[0][i].cpu;
        memory[i] = runs[k][i].megabytes;
      }
      System.out.printf(
          Locale.ROOT,
          "%-10s %5.0f ms = %4.1f x   processor %5.0f ms = %4.1f x   %4.0f MB%n",
          names.get(k),
          median(wall),
          median(ratio),
          median(cpu),
          median(worked),
          median(memory));
    }
  }

  private static List<String> joined(List<String> a, List<String> b) {
    return java.util.stream.Stream.concat(a.stream(), b.stream()).toList();
  }

  /** What a process took, by its own account, which /proc keeps until it is waited for. */
  private static Run run(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process p =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.to(new File("/dev/null")))
            .start();
    Path status = Path.of("/proc", "" + p.pid(), "status");
    double cpu = 0;
    double peak = 0;
    while (p.isAlive()) {
      cpu = Math.max(cpu, p.info().totalCpuDuration().map(d -> d.toNanos() / 1e6).orElse(0.0));
      peak = Math.max(peak, peak(status));
      Thread.sleep(1);
    }
    return new Run((System.nanoTime() - start) / 1e6, cpu, peak);
  }

  private static double peak(Path status) {
    try {
      for (String line : Files.readAllLines(status)) {
        if (line.startsWith("VmHWM:")) {
          return Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024;
        }
      }
    } catch (IOException e) {
      // It has ended.
    }
    return 0;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
