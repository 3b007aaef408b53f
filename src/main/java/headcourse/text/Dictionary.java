package headcourse.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** The words of one language; a file of them is read when the first of its words is wanted. */
final class Dictionary {
  private static final Map<String, Dictionary> ALL = new ConcurrentHashMap<>();

  private static final Pattern CHOICE = Pattern.compile("\\{([^{}|]+)\\|([^{}|]+)}");

  private final String language;
  private final Map<String, String> texts = new ConcurrentHashMap<>();

  private Dictionary(String language) {
    this.language = language;
  }

  static Dictionary of(String language) {
    return ALL.computeIfAbsent(language, Dictionary::new);
  }

  /**
   * The text of a key with values in their places.
   *
   * @param arch which word of {@code {flat|arch}} is said
   * @throws IllegalArgumentException if the key is missing
   */
  String text(String key, boolean arch, Object... values) {
    if (!has(key)) {
      throw new IllegalArgumentException("no " + language + " words for " + key);
    }
    String text = chosen(texts.get(key), arch);
    return values.length == 0 ? text : filled(text, values);
  }

  /** Whether there is a text for a key. */
  boolean has(String key) {
    if (!texts.containsKey(key)) {
      read(language + "/" + key.substring(0, key.indexOf('.')));
    }
    return texts.containsKey(key);
  }

  private static String chosen(String text, boolean arch) {
    return text.indexOf('|') < 0 ? text : CHOICE.matcher(text).replaceAll(arch ? "$2" : "$1");
  }

  private static String filled(String text, Object... values) {
    StringBuilder out = new StringBuilder(text.length() + 16 * values.length);
    int done = 0;
    for (int at = text.indexOf('{'); at >= 0; at = text.indexOf('{', at + 1)) {
      int place = at + 2 < text.length() && text.charAt(at + 2) == '}' ? text.charAt(at + 1) : -1;
      int i = place - '0';
      if (i >= 0 && i < values.length) {
        out.append(text, done, at).append(values[i]);
        done = at + 3;
      }
    }
    return out.append(text, done, text.length()).toString();
  }

  private void read(String name) {
    Properties p = new Properties();
    String path = "/headcourse/words/" + name + ".properties";
    try (InputStream in = Dictionary.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalArgumentException("no words file " + name);
      }
      p.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    p.forEach((k, v) -> texts.put((String) k, (String) v));
  }
}
