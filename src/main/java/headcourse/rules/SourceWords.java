package headcourse.rules;

import headcourse.text.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says what describes a source in the language spoken; a title stays as it was published. */
final class SourceWords {
  static final List<String> KEYS =
      List.of(
          "rule.source-practice",
          "rule.source-tolerances",
          "rule.source-manual",
          "rule.source-guideline",
          "rule.source-guideline-summary",
          "rule.source-guideline-bond",
          "rule.source-supplier",
          "rule.source-maker",
          "rule.source-advice",
          "rule.source-falls",
          "rule.source-articles",
          "rule.source-analogy",
          "rule.source-after",
          "rule.source-reprint",
          "rule.source-month",
          "rule.source-town",
          "rule.source-table",
          "rule.source-circa",
          "rule.source-editions",
          "rule.source-framing",
          "rule.source-lintel",
          "rule.source-height",
          "rule.source-blocks",
          "rule.source-pier",
          "rule.source-forum",
          "rule.source-withdrawal",
          "rule.source-bending",
          "rule.source-editions-note");

  private static final Map<String, String> BY_ENGLISH = byEnglish();

  private SourceWords() {}

  private static Map<String, String> byEnglish() {
    Words english = Words.of("en");
    Map<String, String> keys = new LinkedHashMap<>();
    for (String key : KEYS) {
      keys.put(english.say(key), key);
    }
    return keys;
  }

  static String say(String source, Words words) {
    String key = BY_ENGLISH.get(source);
    return key == null ? source : words.say(key);
  }
}
