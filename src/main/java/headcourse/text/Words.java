package headcourse.text;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * The words on paper, by key. A key's part before its first dot names the file it stands in: {@code
 * wall.centre-line} is in {@code words/en/wall.properties}, {@code words/es/wall.properties}.
 * Places for values are {@code {0}}, {@code {1}} …; {@code {sofito|intradós}} is the first word of
 * a flat head and the second of an arch.
 */
public final class Words {
  private final String[] languages;

  /** Whether the second language is marked in what is said. */
  private final boolean marked;

  /** Whether an arch is spoken of, not a flat head. */
  private final boolean arch;

  private Words(boolean marked, boolean arch, String... languages) {
    this.marked = marked;
    this.arch = arch;
    this.languages = languages;
  }

  /**
   * The words of a language.
   *
   * @param language one of {@link Languages#choices}: {@code es}, or {@code en+es} for both
   */
  public static Words of(String language) {
    return new Words(false, false, language.split("\\+"));
  }

  /** The same with the second language marked, for those who have a document read out. */
  public Words withTongues() {
    return new Words(true, arch, languages);
  }

  /** The same for what is said of an arch, or of a flat head. */
  public Words ofArch(boolean anArch) {
    return anArch == arch ? this : new Words(marked, anArch, languages);
  }

  /**
   * What to print for a key. Both languages where the job asks for both, with a slash between; once
   * where they say the same, and so a figure that both begin or end with.
   *
   * @throws IllegalArgumentException if the key is missing
   */
  public String say(String key, Object... values) {
    return say(words -> words.one(key, values));
  }

  /** The same of a sentence that is put together in each language by itself. */
  public String say(Function<Words, String> sentence) {
    if (languages.length == 1) {
      return sentence.apply(this);
    }
    return BilingualText.of(sentence.apply(first()), sentence.apply(second()), marked);
  }

  /** The same for each language, for places that set them one under the other. */
  public List<String> each(String key, Object... values) {
    return each(words -> words.one(key, values));
  }

  /** The same of a sentence that is put together in each language by itself. */
  public List<String> each(Function<Words, String> sentence) {
    if (languages.length == 1) {
      return List.of(sentence.apply(this));
    }
    String a = sentence.apply(first());
    String b = sentence.apply(second());
    return a.equals(b) ? List.of(a) : List.of(a, marked ? SecondLanguage.second(b) : b);
  }

  /** What to print for a key, or a text where no language has the key. */
  public String sayOr(String key, String text) {
    return Arrays.stream(languages).allMatch(l -> Dictionary.of(l).has(key)) ? say(key) : text;
  }

  private Words first() {
    return new Words(false, arch, languages[0]);
  }

  private Words second() {
    return new Words(false, arch, languages[1]);
  }

  /** The words of each language by itself. */
  public List<Words> singly() {
    return Arrays.stream(languages).map(l -> new Words(false, arch, l)).toList();
  }

  /** BCP 47 tag of the first language. */
  public String tag() {
    return languages[0];
  }

  /** BCP 47 tag of the second language; empty where there is none. */
  public String secondTag() {
    return languages.length == 1 ? "" : languages[1];
  }

  private String one(String key, Object... values) {
    return Dictionary.of(languages[0]).text(key, arch, values);
  }
}
