package headcourse.cli;

import headcourse.diag.Outcome;
import headcourse.job.Job;
import headcourse.job.yaml.JobReader;
import headcourse.page.Desk;
import headcourse.sheet.SheetFrame;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** A job on disk with what its page may reach: its folder, and the folder that it is drawn to. */
final class PageDesk implements Desk {
  private final Path folder;
  private final Arguments arguments;
  private final String name;
  private final WatchedFiles watched = new WatchedFiles();
  private final JobFile file;
  private volatile List<String> drawn = List.of();

  PageDesk(Path folder, Arguments arguments) {
    this.folder = folder;
    this.name = arguments.files().get(0);
    this.arguments = arguments.drawing();
    this.file = new JobFile(folder, name, watched::add, this::near);
    watched.add(folder.resolve(name));
  }

  /** Whether a file lies in the job's folder or in the working folder, links followed. */
  private boolean near(Path path) {
    try {
      Path real = path.toRealPath();
      Path job = folder.resolve(name).toAbsolutePath().getParent().toRealPath();
      return real.startsWith(job) || real.startsWith(folder.toAbsolutePath().toRealPath());
    } catch (IOException e) {
      return false;
    }
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public byte[] read() throws IOException {
    return file.bytes();
  }

  @Override
  public boolean write(byte[] was, byte[] now) throws IOException {
    return new SavedFile(folder.resolve(name)).replace(was, now);
  }

  @Override
  public Optional<byte[]> beside(String relative) {
    return file.beside(relative);
  }

  @Override
  public Outcome<SheetFrame> frame(Job job) {
    return Frames.of(job, file);
  }

  @Override
  public synchronized Drawn draw() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    int status = new DrawCommand(folder, console).one(arguments, file, new TreeMap<>());
    List<String> written =
        out.toString(StandardCharsets.UTF_8)
            .lines()
            .map(l -> l.substring(l.lastIndexOf('/') + 1))
            .toList();
    boolean done = status == Main.DONE || status == Main.FINDINGS;
    drawn = done ? written : drawn;
    return new Drawn(done, written, err.toString(StandardCharsets.UTF_8).strip());
  }

  @Override
  public Optional<byte[]> drawn(String wanted) {
    String root = arguments.out().isEmpty() ? "out" : arguments.out();
    try {
      return drawn.contains(wanted)
          ? Optional.of(
              Files.readAllBytes(
                  folder.resolve(root).resolve(JobReader.folder(name)).resolve(wanted)))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Override
  public String state() {
    return OutputWriter.hash(watched.state().getBytes(StandardCharsets.UTF_8));
  }
}
