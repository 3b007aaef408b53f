package headcourse.cli;

import headcourse.export.JobSchema;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a commented job file to start from. */
record NewCommand(Path folder, Console console) {
  /** The first line of a new job names it for editors. */
  private static final String SCHEMA = "headcourse.schema.json";

  int run(Arguments arguments) {
    if (arguments.files().size() != 1) {
      console.complain("give the name of one file to write: headcourse new JOB.yaml");
      return Main.WRONG;
    }
    String name = arguments.files().get(0);
    try (InputStream in = NewCommand.class.getResourceAsStream("/headcourse/new-job.yaml")) {
      Path path = folder.resolve(name);
      if (path.getParent() != null) {
        Files.createDirectories(path.getParent());
      }
      Files.write(path, in.readAllBytes(), StandardOpenOption.CREATE_NEW);
      schema(path.resolveSibling(SCHEMA));
      return console.say(name);
    } catch (FileAlreadyExistsException e) {
      console.complain(name + " is there already and stays as it is; give another name");
      return Main.WRONG;
    } catch (InvalidPathException e) {
      console.complain("no file can have the name " + name);
      return Main.WRONG;
    } catch (IOException e) {
      console.complain("can't write " + name + ": " + JobFile.reason(e));
      return Main.MACHINE;
    }
  }

  /** Writes the schema beside a job, over an older one of ours at most. */
  private static void schema(Path file) throws IOException {
    if (!Files.exists(file) || Files.readString(file).contains('"' + JobSchema.ID + '"')) {
      Files.writeString(file, SchemaCommand.text());
    }
  }
}
