package headcourse.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes a file that was not there before; one that is there stays as it is. */
record NewFile(Path folder, Console console) {
  /** What is in the file. */
  interface Content {
    /** Its bytes. */
    byte[] bytes() throws IOException;
  }

  /** What is done once the file is there. */
  interface Then {
    /** Does it. */
    int with(Path file) throws IOException;
  }

  int write(String name, Content content, Then then) {
    try {
      Path path = folder.resolve(name);
      byte[] bytes = content.bytes();
      if (path.getParent() != null) {
        Files.createDirectories(path.getParent());
      }
      Files.write(path, bytes, StandardOpenOption.CREATE_NEW);
      return then.with(path);
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
}
