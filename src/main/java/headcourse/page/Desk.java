package headcourse.page;

import headcourse.diag.Outcome;
import headcourse.job.Job;
import headcourse.sheet.SheetFrame;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * What the page may reach on the machine: one job file, what lies beside it, what it is drawn to.
 */
public interface Desk {
  /** The job file's name as the user gave it. */
  String name();

  /** The content of the job file. */
  byte[] read() throws IOException;

  /**
   * Gives the job file another content, in one step.
   *
   * @param was what it must still hold
   * @param now what it is to hold
   * @return false where something else stands in it by now; then it stays
   */
  boolean write(byte[] was, byte[] now) throws IOException;

  /** A file that the job names; empty where there is none in the job's folder. */
  Optional<byte[]> beside(String name);

  /** The frame that the job asks for. */
  Outcome<SheetFrame> frame(Job job);

  /** Draws the job as the file has it, exactly as the command line does. */
  Drawn draw();

  /** A file of the set that was drawn last; empty for any other name. */
  Optional<byte[]> drawn(String name);

  /** What tells one state of the job file, and of the files that it names, from another. */
  String state();

  /**
   * What came of drawing.
   *
   * @param done whether the set was written
   * @param files names of the files, by their place in the folder
   * @param said all that was said
   */
  record Drawn(boolean done, List<String> files, String said) {
    /** Copies the names. */
    public Drawn {
      files = List.copyOf(files);
    }
  }
}
