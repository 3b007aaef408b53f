package headcourse.cli;

import java.io.PrintStream;

/**
 * Says what takes long, and how far it is, in one line that goes again: on a terminal alone, and
 * only what is not done within a second.
 */
final class Progress {
  private static final long SECOND = 1000;

  /** How often the line is written anew, in milliseconds. */
  private static final long TURN = 200;

  private final PrintStream to;
  private final long delay;
  private String text = "";
  private int shown;
  private Thread showing;

  /**
   * A line.
   *
   * @param to where it is shown, or null for nowhere
   * @param delay milliseconds before it is shown first
   */
  Progress(PrintStream to, long delay) {
    this.to = to;
    this.delay = delay;
  }

  /** Shown nowhere. */
  static Progress none() {
    return new Progress(null, SECOND);
  }

  /** Shown where a terminal is, and nowhere in a pipe. */
  static Progress on(PrintStream err) {
    return new Progress(terminal() && !"dumb".equals(System.getenv("TERM")) ? err : null, SECOND);
  }

  /** Since JDK 22 there is a console in a pipe too, and it says whether it is a terminal. */
  private static boolean terminal() {
    var console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (Boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }

  /** Something is being done now. */
  synchronized void at(String what) {
    text = what;
    if (to != null && showing == null) {
      showing = new Thread(this::show, "progress");
      showing.setDaemon(true);
      showing.start();
    }
  }

  private void show() {
    try {
      for (long pause = delay; ; pause = TURN) {
        Thread.sleep(pause);
        synchronized (this) {
          if (showing != Thread.currentThread()) {
            return;
          }
          to.print("\r" + text + " ".repeat(Math.max(0, shown - text.length())));
          to.flush();
          shown = text.length();
        }
      }
    } catch (InterruptedException e) {
      return; // It is done.
    }
  }

  /** It is done, or something else is printed: the line goes. */
  synchronized void done() {
    if (showing != null) {
      showing.interrupt();
      showing = null;
    }
    if (shown > 0) {
      to.print("\r" + " ".repeat(shown) + "\r");
      to.flush();
      shown = 0;
    }
  }
}
