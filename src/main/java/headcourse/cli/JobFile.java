package headcourse.cli;

import headcourse.choose.Letters;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.Job;
import headcourse.job.yaml.JobReader;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * A job file on disk.
 *
 * @param folder the working folder
 * @param name the file's name as the user gave it
 * @param looked is told where a file that the job names was looked for
 * @param may which of them may be read
 */
record JobFile(Path folder, String name, Consumer<Path> looked, Predicate<Path> may) {
  JobFile(Path folder, String name) {
    this(folder, name, p -> {});
  }

  JobFile(Path folder, String name, Consumer<Path> looked) {
    this(folder, name, looked, p -> true);
  }

  /** Larger files than this are no job. */
  private static final int MOST = 4 << 20;

  /** Reads the job as it is to be drawn: with the settings of what was chosen by letter alone. */
  Outcome<Job> readChosen() {
    Outcome<Job> read = read();
    if (read.value().isEmpty()) {
      return read;
    }
    Outcome<Job> settled = Letters.settled(read.value().get());
    List<Diagnostic> said = new ArrayList<>(read.diagnostics());
    said.addAll(settled.diagnostics());
    return new Outcome<>(settled.value(), said);
  }

  /** Reads the job. */
  Outcome<Job> read() {
    byte[] bytes;
    try {
      Path path = folder.resolve(name);
      if (Files.isDirectory(path)) {
        return refused(name + " is a folder", "give the job file itself");
      }
      if (!Files.exists(path)) {
        String ending = ".yaml";
        boolean cut = !name.endsWith(ending) && Files.isRegularFile(folder.resolve(name + ending));
        return refused(
            "there is no file " + name,
            cut
                ? "there is " + name + ending
                : "headcourse new "
                    + (name.contains(".") ? name : name + ending)
                    + " writes one to start from");
      }
      bytes = some(path);
    } catch (InvalidPathException e) {
      return refused("no file can have the name " + name, "give the path of a job file");
    } catch (IOException e) {
      return refused("can't read " + name + ": " + reason(e), "is it yours to read?");
    }
    return JobReader.read(name, bytes, Shapes.definitions(), RuleBook.limits(), this::beside);
  }

  /** The bytes of the job file, for a seed; empty where it can't be read. */
  byte[] bytes() throws IOException {
    return some(folder.resolve(name));
  }

  /** A file that the job names: beside the job file, or else in the working folder. */
  Optional<byte[]> beside(String relative) {
    try {
      Optional<Path> path = place(relative);
      return path.isPresent() ? Optional.of(some(path.get())) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Where such a file stands, or empty where there is none. */
  Optional<Path> place(String relative) {
    try {
      Path parent = folder.resolve(name).getParent();
      for (Path base : parent == null ? List.of(folder) : List.of(parent, folder)) {
        Path path = base.resolve(relative);
        looked.accept(path);
        if (Files.isRegularFile(path) && may.test(path)) {
          return Optional.of(path);
        }
      }
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  // One byte more than the most, so that the reader sees that there was more.
  private static byte[] some(Path path) throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(MOST + 1);
    }
  }

  static String reason(IOException e) {
    if (e instanceof AccessDeniedException denied) {
      return "permission denied"
          + (denied.getFile() == null ? "" : " (" + name(denied) + ")")
          + ", or open in another program";
    }
    if (e instanceof FileAlreadyExistsException there) {
      return name(there) + " is in the way; rename it, or write elsewhere with --out";
    }
    if (e instanceof NoSuchFileException || e instanceof NotDirectoryException) {
      return name((FileSystemException) e) + " is not a folder that can be written to";
    }
    return e instanceof FileSystemException f && f.getReason() != null
        ? f.getReason()
        : String.valueOf(e.getMessage());
  }

  private static String name(FileSystemException e) {
    Path name = e.getFile() == null ? null : Path.of(e.getFile()).getFileName();
    return String.valueOf(name);
  }

  private static Outcome<Job> refused(String message, String hint) {
    return Outcome.failed(List.of(Diagnostic.error(null, message, hint)));
  }
}
