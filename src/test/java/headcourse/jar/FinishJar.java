package headcourse.jar;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;

/** Rewrites a jar in place; see the package. Run by Maven after the jar is put together. */
public final class FinishJar {
  private FinishJar() {}

  /**
   * Rewrites.
   *
   * @param args the jar's path
   * @throws IOException when it can't be read or written
   */
  public static void main(String[] args) throws IOException {
    Path jar = Path.of(args[0]);
    Map<String, byte[]> entries = StoredJar.read(jar);
    StoredJar.write(jar, LinkedClasses.of(entries));
  }
}
