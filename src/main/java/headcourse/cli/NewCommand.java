package headcourse.cli;

import headcourse.export.JobSchema;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a commented job file to start from. */
record NewCommand(Path folder, Console console) {
  /** The first line of a new job names it for editors. */
  private static final String SCHEMA = "headcourse.schema.json";

  int run(Arguments arguments) {
    if (arguments.files().size() != 1) {
      console.complain("give the name of one file to write: headcourse new JOB.yaml");
      return Main.WRONG;
    }
    return begin(arguments.files().get(0));
  }

  /** Writes a job under a name that no file has yet. */
  int begin(String name) {
    return new NewFile(folder, console)
        .write(
            name,
            NewCommand::text,
            path -> {
              schema(path.resolveSibling(SCHEMA));
              console.say(name);
              console.note("change it to yours, then: headcourse check " + name);
              return Main.DONE;
            });
  }

  private static byte[] text() throws IOException {
    try (InputStream in = NewCommand.class.getResourceAsStream("/headcourse/new-job.yaml")) {
      return in.readAllBytes();
    }
  }

  /** Writes the schema beside a job, over an older one of ours at most. */
  private static void schema(Path file) throws IOException {
    if (!Files.exists(file) || Files.readString(file).contains('"' + JobSchema.ID + '"')) {
      Files.writeString(file, SchemaCommand.text());
    }
  }
}
