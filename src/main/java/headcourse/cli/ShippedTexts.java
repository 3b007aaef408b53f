package headcourse.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes what a package brings besides the program; a step of the build, not for users. */
public final class ShippedTexts {
  private ShippedTexts() {}

  /** Each file by its place under {@code share}. */
  static Map<String, String> all() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("man/man1/headcourse.1", Manual.page(Main.version()));
    files.put("bash-completion/completions/headcourse", Completion.bash());
    files.put("zsh/site-functions/_headcourse", Completion.zsh());
    return files;
  }

  /** Writes them into the folder that is the only argument. */
  public static void main(String[] args) throws IOException {
    for (Map.Entry<String, String> file : all().entrySet()) {
      Path path = Path.of(args[0]).resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }
}
