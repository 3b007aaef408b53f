package headcourse.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An option of the command line. Arguments, completion and the manual page are made of these. */
enum Option {
  OUT("--out", "FOLDER"),
  ONLY("--only", "KIND"),
  PAPER("--paper", "SIZE"),
  OPENING("--opening", "D1"),
  OPEN("--open", ""),
  LANG("--lang", "TAG"),
  HELP("--help", ""),
  VERSION("--version", "");

  private final String word;
  private final String value;

  Option(String word, String value) {
    this.word = word;
    this.value = value;
  }

  /** As it is typed. */
  String word() {
    return word;
  }

  /** What stands after it, as the help calls it; empty for nothing. */
  String value() {
    return value;
  }

  /** The option with a word. */
  static Optional<Option> named(String word) {
    return Stream.of(values()).filter(o -> o.word.equals(word)).findFirst();
  }

  /** Those of a command; of the empty one what stands without a command. */
  static List<Option> of(String command) {
    List<Option> all =
        new ArrayList<>(
            switch (command) {
              case "" -> List.of(VERSION);
              case "draw", "watch" -> List.of(OUT, ONLY, OPENING, OPEN, PAPER);
              case "page" -> List.of(OUT, OPEN, LANG, PAPER);
              case "choose" -> List.of(OUT, PAPER);
              case "form" -> List.of(PAPER, OPEN);
              default -> List.<Option>of();
            });
    all.add(HELP);
    return all;
  }

  static String words(List<Option> options) {
    return options.stream().map(Option::word).collect(Collectors.joining(", "));
  }
}
