package headcourse.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Puts all files of a job into its folder in one step, or none. The whole folder is made anew
 * beside its place, the user's other files in it under a second name; then the old one is renamed
 * away and the new one to its place. What a killed run leaves is told by names, and the next run
 * cleans up: {@code .JOB.part} was never finished, {@code .JOB.new} is complete and takes its place
 * where that is empty, {@code .JOB.old} goes back if there is nothing else, or is taken away.
 */
final class OutputFolder {
  /** One at a time in this process, and none is cut short when the process is told to end. */
  private static final Object TURN = new Object();

  private final Path folder;
  private final Predicate<String> ours;
  private final Disk disk;
  private final Path part;
  private final Path fresh;
  private final Path old;

  /**
   * A folder.
   *
   * @param ours names of files that go when a set is drawn that no longer has them
   */
  OutputFolder(Path folder, Predicate<String> ours) throws IOException {
    this(folder, ours, Disk.REAL);
  }

  OutputFolder(Path folder, Predicate<String> ours, Disk disk) throws IOException {
    // Where the folder is a link to one elsewhere, that one is replaced and the link stays.
    Path place = folder.toAbsolutePath().normalize();
    this.folder = Files.isDirectory(place) ? place.toRealPath() : place;
    this.ours = ours;
    this.disk = disk;
    this.part = beside("part");
    this.fresh = beside("new");
    this.old = beside("old");
  }

  private Path beside(String what) {
    return folder.resolveSibling("." + folder.getFileName() + "." + what);
  }

  /**
   * Replaces the set.
   *
   * @param files contents by file name
   * @param whole whether files of an earlier set that this one has not are taken away
   * @throws IOException where the disk refuses; what was there is there still
   */
  void replace(Map<String, Content> files, boolean whole) throws IOException {
    Thread waiting = new Thread(OutputFolder::turn);
    try {
      Runtime.getRuntime().addShutdownHook(waiting);
    } catch (IllegalStateException e) {
      throw new IOException("the program was told to end", e);
    }
    try {
      synchronized (TURN) {
        Files.createDirectories(folder.getParent());
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
          throw new FileAlreadyExistsException(folder.toString());
        }
        FolderLock lock = FolderLock.take(beside("lock"));
        try {
          recover();
          place(new TreeMap<>(files), whole);
        } finally {
          lock.close();
        }
      }
    } finally {
      forget(waiting);
    }
  }

  /** Waits for the folder that is being placed. */
  private static void turn() {
    synchronized (TURN) {
      return;
    }
  }

  private static void forget(Thread waiting) {
    try {
      Runtime.getRuntime().removeShutdownHook(waiting);
    } catch (IllegalStateException e) {
      return; // The end has begun, and waited.
    }
  }

  private void place(Map<String, Content> files, boolean whole) throws IOException {
    boolean there = Files.exists(folder);
    try {
      stage(files, whole, there);
      disk.move(part, fresh);
      if (there) {
        disk.move(folder, old);
      }
      disk.move(fresh, folder);
    } catch (IOException failure) {
      takeBack(there, failure);
      throw failure;
    }
    disk.settle(folder.getParent());
    if (there) {
      try {
        putAway(whole);
      } catch (IOException e) {
        return; // The set is in its place; the next run tries again.
      }
    }
  }

  private void stage(Map<String, Content> files, boolean whole, boolean there) throws IOException {
    disk.folder(part);
    for (var e : files.entrySet()) {
      disk.write(part.resolve(e.getKey()), e.getValue());
    }
    if (there) {
      Predicate<String> others = n -> !files.containsKey(n) && !(whole && ours.test(n));
      for (Path p : children(folder)) {
        if (others.test(p.getFileName().toString())) {
          alsoAs(p, part.resolve(p.getFileName()));
        }
      }
      permit(folder, part);
    }
    disk.settle(part);
  }

  /**
   * Gives a file of the user, or all in a folder, a second name; what can't have one moves later.
   */
  private void alsoAs(Path file, Path name) throws IOException {
    if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
      if (Files.isReadable(file)) {
        disk.folder(name);
        for (Path p : children(file)) {
          alsoAs(p, name.resolve(p.getFileName()));
        }
        permit(file, name);
      }
      return;
    }
    try {
      disk.link(file, name);
    } catch (FileSystemException e) {
      if (Files.exists(name, LinkOption.NOFOLLOW_LINKS)) {
        throw e; // Half a copy: the disk is full.
      }
    }
  }

  private void takeBack(boolean there, IOException failure) {
    try {
      if (there && !Files.exists(folder) && Files.exists(old)) {
        disk.move(old, folder);
      }
      remove(part);
      remove(fresh);
    } catch (IOException again) {
      failure.addSuppressed(again);
    }
  }

  /** Finishes or undoes what a killed run left. */
  void recover() throws IOException {
    remove(part);
    if (!Files.exists(folder)) {
      if (Files.exists(fresh)) {
        disk.move(fresh, folder);
      } else if (Files.exists(old)) {
        disk.move(old, folder);
      }
    }
    remove(fresh);
    if (Files.exists(old)) {
      putAway(true);
    }
  }

  /** Takes the old folder away, once all of the user's is in the new one. */
  private void putAway(boolean whole) throws IOException {
    for (Path p : children(old)) {
      if (!whole || !ours.test(p.getFileName().toString())) {
        carry(p, folder.resolve(p.getFileName()));
      }
    }
    remove(old);
  }

  private void carry(Path from, Path to) throws IOException {
    if (!Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
      disk.move(from, to);
    } else if (Files.isDirectory(from, LinkOption.NOFOLLOW_LINKS)) {
      for (Path p : children(from)) {
        carry(p, to.resolve(p.getFileName()));
      }
    } else if (time(from) > time(to)) {
      // Saved by another program while the folder was made.
      disk.move(from, to);
    }
  }

  private static long time(Path file) throws IOException {
    return Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS).toMillis();
  }

  private void remove(Path path) throws IOException {
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      open(path);
      for (Path p : children(path)) {
        remove(p);
      }
    }
    disk.delete(path);
  }

  private static List<Path> children(Path folder) throws IOException {
    try (Stream<Path> there = Files.list(folder)) {
      return there.sorted().toList();
    }
  }

  /** A folder of the user that nobody may write to is still one that has moved. */
  private static void open(Path folder) throws IOException {
    if (posix(folder) && !Files.isWritable(folder)) {
      Set<PosixFilePermission> may = EnumSet.copyOf(Files.getPosixFilePermissions(folder));
      may.addAll(PosixFilePermissions.fromString("rwx------"));
      Files.setPosixFilePermissions(folder, may);
    }
  }

  private static void permit(Path like, Path folder) throws IOException {
    if (posix(folder)) {
      Files.setPosixFilePermissions(folder, Files.getPosixFilePermissions(like));
    }
  }

  private static boolean posix(Path path) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix");
  }
}
