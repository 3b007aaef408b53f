package headcourse.cli;

import headcourse.audit.PrintFault;
import headcourse.diag.Diagnostic;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The command line: {@code headcourse draw jobs/mill-barn.yaml}. */
public final class Main {
  /** Drawn, or checked, and nothing stands against it. */
  static final int DONE = 0;

  /** Drawn, but a rule of severity error stands unaccepted. */
  static final int FINDINGS = 1;

  /** The job, or the command, is wrong; nothing was written. */
  static final int WRONG = 2;

  /** The machine failed, or the program did. */
  static final int MACHINE = 3;

  /** The folder that names are meant in, where it is not the process's own. */
  private static final String FOLDER = "headcourse.folder";

  private Main() {}

  /** Runs the program; ends the process with its exit status unless that is 0. */
  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    Console console = new Console(out, err, Progress.on(err), Viewer.SYSTEM);
    int status = run(List.of(args), Path.of(System.getProperty(FOLDER, "")), console);
    console.progress().done();
    out.flush();
    err.flush();
    if (status != DONE) {
      System.exit(status);
    }
  }

  /** Runs the program in a folder and gives its exit status. */
  static int run(List<String> args, Path folder, PrintStream out, PrintStream err) {
    return run(args, folder, new Console(out, err));
  }

  static int run(List<String> args, Path folder, Console console) {
    List<Diagnostic> faults = new ArrayList<>();
    Arguments arguments = Arguments.parse(args, faults);
    if (!faults.isEmpty()) {
      faults.forEach(console::tell);
      return WRONG;
    }
    try {
      return switch (arguments.command()) {
        case "draw" -> new DrawCommand(folder, console).run(arguments);
        case "form" -> new FormCommand(folder, console).run(arguments);
        case "watch" -> new WatchCommand(folder, console).run(arguments);
        case "page" -> new PageCommand(folder, console).run(arguments);
        case "check" -> new CheckCommand(folder, console).run(arguments);
        case "choose" -> new ChooseCommand(folder, console).run(arguments);
        case "new" -> new NewCommand(folder, console).run(arguments);
        case "rules" -> new RulesCommand(console).run();
        case "explain" -> new ExplainCommand(folder, console).run(arguments);
        case "schema" -> new SchemaCommand(console).run();
        case "version" -> console.say("headcourse " + version());
        case "help" -> console.say(Help.of(arguments.files().get(0)));
        default -> console.say(Help.of(""));
      };
    } catch (OutOfMemoryError e) {
      console.complain("the machine ran out of memory; start java with a larger -Xmx");
      return MACHINE;
    } catch (PrintFault e) {
      console.complain("a fault of the program, not of your job; nothing was written");
      e.getMessage().lines().forEach(line -> console.note("  " + line));
      return MACHINE;
    } catch (RuntimeException | LinkageError | StackOverflowError e) {
      // Nothing was written yet: files are placed only when all are made.
      console.complain("a fault of the program, not of your job; nothing was written");
      e.printStackTrace(console.err());
      return MACHINE;
    }
  }

  static String version() {
    String v = Main.class.getPackage().getImplementationVersion();
    return v == null ? "(built from source)" : v;
  }
}
