package headcourse.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The words on paper, by key. A key's part before its first dot names the file it stands in: {@code
 * wall.centre-line} is in {@code words/wall_en.properties} and {@code words/wall_es.properties}.
 * Places for values are {@code {0}}, {@code {1}} …
 */
public final class Words {
  private static final Map<String, Properties> FILES = new ConcurrentHashMap<>();
  private final String[] languages;

  private Words(String... languages) {
    this.languages = languages;
  }

  /**
   * The words of a language.
   *
   * @param language {@code en}, {@code es}, or {@code en+es} for both
   */
  public static Words of(String language) {
    return new Words(language.split("\\+"));
  }

  /**
   * What to print for a key. Both languages where the job asks for both, with a slash between; once
   * where they say the same.
   *
   * @throws IllegalArgumentException if the key is missing
   */
  public String say(String key, Object... values) {
    String first = one(languages[0], key, values);
    if (languages.length == 1) {
      return first;
    }
    String second = one(languages[1], key, values);
    return first.equals(second) ? first : first + " / " + second;
  }

  /** The same for each language, for places that set them one under the other. */
  public java.util.List<String> each(String key, Object... values) {
    return java.util.Arrays.stream(languages).map(l -> one(l, key, values)).distinct().toList();
  }

  /** The words of each language by itself. */
  public java.util.List<Words> singly() {
    return java.util.Arrays.stream(languages).map(Words::new).toList();
  }

  /** BCP 47 tag of the first language. */
  public String tag() {
    return languages[0].equals("es") ? "es" : "en";
  }

  private static String one(String language, String key, Object... values) {
    String text = file(key.substring(0, key.indexOf('.')), language).getProperty(key);
    if (text == null) {
      throw new IllegalArgumentException("no " + language + " words for " + key);
    }
    for (int i = 0; i < values.length; i++) {
      text = text.replace("{" + i + "}", String.valueOf(values[i]));
    }
    return text;
  }

  private static Properties file(String name, String language) {
    return FILES.computeIfAbsent(
        name + "_" + language,
        f -> {
          Properties p = new Properties();
          try (InputStream in =
              Words.class.getResourceAsStream("/headcourse/words/" + f + ".properties")) {
            if (in == null) {
              throw new IllegalArgumentException("no words file " + f);
            }
            p.load(new InputStreamReader(in, StandardCharsets.UTF_8));
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
          return p;
        });
  }
}
