package headcourse.cli;

import headcourse.diag.Diagnostic;
import headcourse.diag.DiagnosticPrinter;
import java.io.PrintStream;

/** Where results and messages go; never coloured. */
record Console(PrintStream out, PrintStream err, Progress progress, Viewer viewer) {
  /** One that is no terminal. */
  Console(PrintStream out, PrintStream err) {
    this(out, err, Progress.none(), Viewer.SYSTEM);
  }

  /** Prints a line of messages. */
  void note(String text) {
    progress.done();
    err.println(text);
  }

  /** Prints a result; always 0, so that a command can end with it. */
  int say(String text) {
    progress.done();
    out.println(text);
    return Main.DONE;
  }

  /** Prints a message about the job. */
  void tell(Diagnostic diagnostic) {
    note(DiagnosticPrinter.print(diagnostic));
  }

  /** Prints a message about the machine. */
  void complain(String text) {
    note("headcourse: " + text);
  }
}
