package headcourse.cli;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The manual page, made of what {@code --help} says, so that they can't disagree. */
final class Manual {
  /** A word to the left of what it means; a sign of indentation may stand alone. */
  private static final Pattern ENTRY = Pattern.compile("  (\\S.*?)(?: {2,}(\\S.*))?");

  private final StringBuilder page = new StringBuilder();

  private Manual() {}

  /** The page in the language of man(7). */
  static String page(String version) {
    Manual m = new Manual();
    m.write(version);
    return m.page.toString();
  }

  private void write(String version) {
    List<String> overall = Help.of("").lines().toList();
    line(".TH HEADCOURSE 1 \"\" \"headcourse " + version + "\" \"User Commands\"");
    line(".SH NAME");
    line(escaped(overall.get(0).replaceFirst(": ", " - ")));
    line(".SH SYNOPSIS");
    for (String command : Arguments.COMMANDS) {
      line(".B " + escaped(Help.of(command).lines().findFirst().orElseThrow()));
      line(".br");
    }
    line(".SH DESCRIPTION");
    body(lastParagraph(overall));
    for (String command : Arguments.COMMANDS) {
      List<String> help = Help.of(command).lines().toList();
      line(".SH " + escaped("headcourse " + command));
      line(".B " + escaped(help.get(0)));
      body(help.subList(1, help.size()));
    }
    line(".SH OPTIONS OF EVERY COMMAND");
    entry(Option.HELP.word(), "what a command does, and its options");
    entry(Option.VERSION.word(), "which headcourse this is");
    line(".SH ENVIRONMENT");
    entry("JAVA_OPTS", "more options for the Java that runs the program, as -Xmx2g");
  }

  private static List<String> lastParagraph(List<String> lines) {
    return lines.subList(lines.lastIndexOf("") + 1, lines.size());
  }

  private void body(List<String> lines) {
    boolean begins = true;
    boolean inEntry = false;
    for (String text : lines) {
      Matcher entry = ENTRY.matcher(text);
      if (text.isEmpty()) {
        begins = true;
        continue;
      }
      if (entry.matches()) {
        entry(entry.group(1), entry.group(2) == null ? "" : entry.group(2));
        inEntry = true;
      } else {
        boolean indented = text.startsWith(" ");
        if (begins || inEntry && !indented) {
          line(".PP");
        }
        inEntry &= indented;
        line(escaped(text.strip()));
      }
      begins = false;
    }
  }

  private void entry(String word, String meaning) {
    line(".TP");
    line(".B " + escaped(word));
    if (!meaning.isEmpty()) {
      line(escaped(meaning));
    }
  }

  private void line(String text) {
    page.append(text).append('\n');
  }

  private static String escaped(String text) {
    String plain = text.replace("\\", "\\e").replace("-", "\\-");
    return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
  }
}
