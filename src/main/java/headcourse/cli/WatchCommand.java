package headcourse.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Draws jobs, and draws each again whenever it or a file that it names is saved. */
record WatchCommand(Path folder, Console console) {
  /** How often the files are looked at, in milliseconds; a save is seen within two looks. */
  private static final long LOOK = 50;

  int run(Arguments arguments) {
    if (arguments.files().isEmpty()) {
      console.complain("which job? headcourse watch JOB.yaml");
      return Main.WRONG;
    }
    List<Watched> all = new ArrayList<>();
    for (String name : arguments.files()) {
      Watched w = new Watched(name);
      w.draw(arguments);
      all.add(w);
    }
    console.note("watching " + String.join(", ", arguments.files()) + "; Ctrl-C ends it");
    try {
      while (true) {
        Thread.sleep(LOOK);
        all.forEach(w -> w.look(arguments));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Main.DONE;
    }
  }

  /** One job with the files that it was read from. */
  private final class Watched {
    private final String name;
    private final WatchedFiles files = new WatchedFiles();
    private String drawn = "";
    private String before = "";

    Watched(String name) {
      this.name = name;
    }

    /** Draws it if a file has another content than when it was drawn last, and has come to rest. */
    void look(Arguments arguments) {
      String now = files.state();
      if (!now.equals(drawn) && now.equals(before)) {
        console.note(name + " was saved");
        draw(arguments);
      }
      before = now;
    }

    void draw(Arguments arguments) {
      files.add(folder.resolve(name));
      drawn = files.state();
      before = drawn;
      // Another job of the same name would write over this one, told by draw; here each stands
      // alone.
      new DrawCommand(folder, console)
          .one(arguments, new JobFile(folder, name, files::add), new java.util.TreeMap<>());
    }
  }
}
