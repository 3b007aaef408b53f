package headcourse.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Puts all files of a job into its folder together, or none: every file is first written under
 * another name beside its place, then all are moved; if a move fails, what was there comes back.
 */
final class OutputFolder {
  private final Path folder;
  private final String tag = "." + ProcessHandle.current().pid();

  OutputFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * Replaces files.
   *
   * @param files contents by file name
   * @param stale which files of an earlier run to take away, by name
   */
  void replace(Map<String, byte[]> files, java.util.function.Predicate<String> stale)
      throws IOException {
    Map<String, byte[]> sorted = new TreeMap<>(files);
    boolean made = !Files.exists(folder);
    Files.createDirectories(folder);
    Map<Path, Path> staged = new LinkedHashMap<>();
    Map<Path, Path> kept = new LinkedHashMap<>();
    List<Path> placed = new ArrayList<>();
    try {
      for (var e : sorted.entrySet()) {
        Path temporary = folder.resolve("." + e.getKey() + tag + ".new");
        staged.put(folder.resolve(e.getKey()), temporary);
        Files.write(temporary, e.getValue());
      }
      for (Path old : leftovers(sorted, stale)) {
        keep(old, kept);
      }
      for (var e : staged.entrySet()) {
        if (Files.exists(e.getKey())) {
          keep(e.getKey(), kept);
        }
        Files.move(e.getValue(), e.getKey(), StandardCopyOption.ATOMIC_MOVE);
        placed.add(e.getKey());
      }
    } catch (IOException failure) {
      takeBack(staged, kept, placed, made, failure);
      throw failure;
    }
    for (Path old : kept.values()) {
      Files.deleteIfExists(old);
    }
  }

  private List<Path> leftovers(
      Map<String, byte[]> files, java.util.function.Predicate<String> stale) throws IOException {
    try (Stream<Path> there = Files.list(folder)) {
      return there
          .filter(p -> !files.containsKey(p.getFileName().toString()))
          .filter(p -> stale.test(p.getFileName().toString()))
          .sorted()
          .toList();
    }
  }

  private void keep(Path file, Map<Path, Path> kept) throws IOException {
    Path aside = folder.resolve("." + file.getFileName() + tag + ".old");
    Files.move(file, aside, StandardCopyOption.ATOMIC_MOVE);
    kept.put(file, aside);
  }

  private void takeBack(
      Map<Path, Path> staged,
      Map<Path, Path> kept,
      List<Path> placed,
      boolean made,
      IOException failure) {
    try {
      for (Path p : placed) {
        Files.deleteIfExists(p);
      }
      for (var e : kept.entrySet()) {
        Files.move(e.getValue(), e.getKey(), StandardCopyOption.ATOMIC_MOVE);
      }
      for (Path temporary : staged.values()) {
        Files.deleteIfExists(temporary);
      }
      if (made) {
        Files.deleteIfExists(folder);
      }
    } catch (IOException again) {
      failure.addSuppressed(again);
    }
  }
}
