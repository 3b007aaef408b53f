package headcourse.cli;

import headcourse.diag.Diagnostic;
import headcourse.diag.DiagnosticPrinter;
import java.io.PrintStream;

/** Where results and messages go; never coloured. */
record Console(PrintStream out, PrintStream err) {
  /** Prints a result; always 0, so that a command can end with it. */
  int say(String text) {
    out.println(text);
    return Main.DONE;
  }

  /** Prints a message about the job. */
  void tell(Diagnostic diagnostic) {
    err.println(DiagnosticPrinter.print(diagnostic));
  }

  /** Prints a message about the machine. */
  void complain(String text) {
    err.println("headcourse: " + text);
  }
}
