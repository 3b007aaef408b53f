package headcourse.cli;

import headcourse.page.PageServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;

/** Serves a page to fill a job in, to this machine alone, until it is told to end. */
record PageCommand(Path folder, Console console) {
  int run(Arguments arguments) {
    if (arguments.files().size() != 1) {
      console.complain("which job? headcourse page JOB.yaml");
      return Main.WRONG;
    }
    String name = arguments.files().get(0);
    int there = there(name);
    if (there != Main.DONE) {
      return there;
    }
    try (PageServer page =
        PageServer.of(new PageDesk(folder, arguments), arguments.language(), 0)) {
      console.say(page.address());
      console.note("the page of " + name + " is there until Ctrl-C; only this machine can open it");
      if (arguments.open()) {
        console.viewer().show(page.address());
      }
      new CountDownLatch(1).await();
      return Main.DONE;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Main.DONE;
    } catch (IOException e) {
      console.complain("can't serve the page: " + JobFile.reason(e));
      return Main.MACHINE;
    }
  }

  /** A job that is not there yet is begun as {@code new} begins one. */
  private int there(String name) {
    try {
      Path path = folder.resolve(name);
      if (Files.isDirectory(path)) {
        console.complain(name + " is a folder; give the job file itself");
        return Main.WRONG;
      }
      return Files.exists(path) ? Main.DONE : new NewCommand(folder, console).begin(name);
    } catch (java.nio.file.InvalidPathException e) {
      console.complain("no file can have the name " + name);
      return Main.WRONG;
    }
  }
}
