package headcourse.text;

/**
 * The words on paper, by key. A key's part before its first dot names the file it stands in: {@code
 * wall.centre-line} is in {@code words/wall_en.properties} and {@code words/wall_es.properties}.
 * Places for values are {@code {0}}, {@code {1}} …
 */
public final class Words {
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
    return Dictionary.of(language).text(key, values);
  }
}
