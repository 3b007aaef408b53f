package headcourse.rules;

import headcourse.text.Words;
import java.util.List;

/** Says what describes a source in the language spoken; a title stays as it was published. */
final class SourceWords {
  private static final Words ENGLISH = Words.of("en");
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
          "rule.source-editions-note");

  private SourceWords() {}

  static String say(String source, Words words) {
    return KEYS.stream()
        .filter(key -> ENGLISH.say(key).equals(source))
        .findFirst()
        .map(words::say)
        .orElse(source);
  }
}
