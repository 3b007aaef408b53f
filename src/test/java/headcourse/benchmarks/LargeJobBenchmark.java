package headcourse.benchmarks;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Draws jobs of many openings, each in a process of its own as the launcher starts it, and prints
 * what it took: time, the processor's time, the most memory that the process held, the greatest
 * file, all files. Run {@code mvn package} first; arguments: numbers of openings, 50, 300 and 1,000
 * where there are none. Linux only.
 */
public final class LargeJobBenchmark {
  private static final String[] WIDTHS = {
    "2' 8\"", "3'", "3' 4\"", "4'", "4' 6\"", "5'", "6'", "7' 3\"", "8'", "10'"
  };

  private LargeJobBenchmark() {}

  /** Runs it. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int[] sizes =
        args.length == 0
            ? new int[] {50, 300, 1000}
            : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
    for (int n : sizes) {
      Path folder = Files.createTempDirectory("headcourse-large");
      Path job = Files.writeString(folder.resolve("large.yaml"), job(n));
      List<String> command = new ArrayList<>();
      command.add(System.getProperty("headcourse.launcher", "target/headcourse"));
      command.addAll(List.of("draw", job.toString(), "--out", folder.toString()));
      ProcessRun run = ProcessRun.of(command, new File("/dev/null"));
      List<Long> files = sizes(folder.resolve("large"));
      System.out.printf(
          Locale.ROOT,
          "%5d openings, %4d KB of job: exit %d, %6.1f s, processor %6.1f s, %4.0f MB;"
              + " %d files, %.1f MB, the greatest %.1f MB%n",
          n,
          Files.size(job) / 1024,
          run.exit(),
          run.wall() / 1000,
          run.cpu() / 1000,
          run.megabytes(),
          files.size(),
          files.stream().mapToLong(Long::longValue).sum() / 1e6,
          files.stream().mapToLong(Long::longValue).max().orElse(0) / 1e6);
    }
  }

  private static List<Long> sizes(Path folder) throws IOException {
    List<Long> all = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path p : files.toList()) {
          all.add(Files.size(p));
        }
      }
    }
    return all;
  }

  /** A job of many openings, a fifth of them arches, out of one pile of corners. */
  static String job(int openings) {
    StringBuilder s =
        new StringBuilder(
            """
            job: {number: 26-300, title: Long row, mason: Ash Hollow Masonry, date: 2026-05-04}
            units: in
            grid: 1/16
            paper: letter
            stone: {name: Grey sandstone, density: 138 lb/ft3, thickness: 1 1/4}
            wall:
              bed: 1/2
              scratch: 1/2
              sheathing: 1/2
              framing: 3 1/2
              backing:
                - {to: 13 5/8, kind: wood, name: lintel, species: douglas-fir}
                - {kind: board}
            setting: {joints: dry, mortar: polymer-modified, opens: 1/64, cut-tolerance: 1/32}
            tools:
              saw: {kerf: 1/8, depth-of-cut: 4 5/8, tilts-to: 45}
              grinder: {blade: 4 1/2, kerf: 1/4}
            fastener: {lengths: [3, 3 1/2, 4, 4 1/2], shank: 3/16, head: 3/8, embedment: 1}
            openings:
            """);
    for (int i = 1; i <= openings; i++) {
      s.append("  - mark: W").append(i).append('\n');
      s.append("    label: Window ").append(i).append(", ").append(i % 2 == 0 ? "yard" : "street");
      s.append(" side\n    width: ").append(WIDTHS[i * 7 % WIDTHS.length]).append('\n');
      s.append("    height: 6' 8\"\n    sill: 2' 6\"\n    reveal: 4\n    head:\n");
      if (i % 5 == 0) {
        s.append("      shape: segmental\n      rise: 5\n      height: 9\n");
        s.append("      key: {rise: 1 1/2}\n      stones: {min: 3, max: 8, target: 5}\n");
      } else {
        s.append("      shape: soldier\n      height: 12\n");
        s.append("      key: {bottom: ").append(5 + i % 4).append(", top: ").append(8 + i % 4);
        s.append(", rise: 2, drop: 1, proud: 1/2}\n");
        s.append("      stones: {min: 5, max: 8 1/2, target: 7 7/16, rhythm: even}\n");
        s.append("      bearing: {min: 4, max: 8, target: 6}\n");
        s.append("      clear: 1 1/2\n      soffit: returned\n");
      }
    }
    s.append("stock:\n  corners:\n    - {mark: C1, arris: 24, face: 16, return: 5, ");
    s.append("thickness: 1 1/4, count: ").append(openings * 8).append("}\n");
    return s.toString();
  }
}
