package headcourse.benchmarks;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a process and those that it started took, by their own account in {@code /proc}.
 *
 * @param exit its code
 * @param wall milliseconds from start to end
 * @param cpu milliseconds of the processor
 * @param megabytes the most that one of them held of real memory
 */
record ProcessRun(int exit, double wall, double cpu, double megabytes) {
  /** Runs a command and waits for it. */
  static ProcessRun of(List<String> command, File out) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process p = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out).start();
    double cpu = 0;
    double peak = 0;
    while (p.isAlive()) {
      List<ProcessHandle> all = new ArrayList<>(List.of(p.toHandle()));
      try (Stream<ProcessHandle> more = p.descendants()) {
        more.forEach(all::add);
      }
      double used = 0;
      for (ProcessHandle h : all) {
        used += h.info().totalCpuDuration().map(d -> d.toNanos() / 1e6).orElse(0.0);
        peak = Math.max(peak, peak(h.pid()));
      }
      cpu = Math.max(cpu, used);
      Thread.sleep(20);
    }
    return new ProcessRun(p.waitFor(), (System.nanoTime() - start) / 1e6, cpu, peak);
  }

  private static double peak(long pid) {
    try {
      for (String line : Files.readAllLines(Path.of("/proc", "" + pid, "status"))) {
        if (line.startsWith("VmHWM:")) {
          return Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024;
        }
      }
    } catch (IOException e) {
      return 0; // It has ended.
    }
    return 0;
  }
}
