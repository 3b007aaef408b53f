package headcourse.job.yaml;

import headcourse.diag.Span;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Slips of the pen that make a text no YAML, or another than was meant. The library names what it
 * could not go on with, often lines farther down; here the line is found that caused it, and what
 * to write instead.
 */
final class Slips {
  private static final String INDENT = "^(\\s*(?:- +)*)";
  private static final Pattern TAB = Pattern.compile("^ *\t\\s*");
  private static final Pattern NO_BLANK =
      Pattern.compile(INDENT + "([a-z][a-z-]*):([^\\s:/,}\\]].*)$");
  private static final Pattern NO_COLON =
      Pattern.compile(INDENT + "([a-z][a-z-]*)(?: *= *| +(?=[0-9]))([^\\s=:][^:]*)$");
  private static final Pattern KEY = Pattern.compile(INDENT + "([A-Za-z][\\w-]*): +(\\S.*)$");
  private static final Pattern LIST_ITEM = Pattern.compile("^(\\s*(?:- +)+)()([\"'].*)$");

  /** A length in quotes within braces that are its own marks too. */
  private static final Pattern IN_BRACES =
      Pattern.compile(
          "([a-z-]+): *(\"[0-9][^,}\\]\"]*\"\"|'[0-9][^,}\\]']*'')(?=\\s*(?:[,}\\]]|$))");

  private static final Pattern COLON_IN_BRACES =
      Pattern.compile("[{,]\\s*([a-z-]+): ([^,{}\\[\\]\"'#:]+: [^,{}\\[\\]]*)");
  private static final Pattern QUOTED =
      Pattern.compile("(?:'(?:[^']|'')*'|\"(?:[^\"\\\\]|\\\\.)*\")\\s*(?:#.*)?");

  /** Nobody writes longer lines by hand. */
  private static final int LONGEST = 500;

  private final JobText text;
  private final Problems problems;
  private final List<String> lines;
  private int told;

  Slips(JobText text, Problems problems) {
    this.text = text;
    this.problems = problems;
    this.lines = text.lines().stream().map(l -> l.length() > LONGEST ? "" : l).toList();
  }

  /**
   * Tells the slips of a text that the library could not read.
   *
   * @param line where it gave up, from 1
   * @param problem what it says
   * @return whether one was found
   */
  boolean tell(int line, String problem) {
    tabs();
    for (int i = 0; i < lines.size() && told < Problems.MOST; i++) {
      if (!lines.get(i).strip().startsWith("#")) {
        line(i);
      }
    }
    return told > 0
        || problem.contains("',' or") && brace(line - 1)
        || (problem.contains("block end") || problem.contains("not allowed")) && indent(line - 1)
        || unclosed(line - 1);
  }

  /** Tells quotes in a line that end elsewhere than was meant; whether there are any. */
  boolean quotes(int line) {
    quoted(line - 1, true);
    return told > 0;
  }

  private void line(int i) {
    Matcher m = NO_BLANK.matcher(lines.get(i));
    if (m.find()) {
      String cure = m.group(2) + ": " + m.group(3).strip();
      tell(i, m.end(2), 1, "no blank after this colon", "write " + cure);
      return;
    }
    m = NO_COLON.matcher(lines.get(i));
    if (m.find()) {
      String cure = m.group(2) + ": " + m.group(3).strip();
      tell(i, m.start(2), m.end(2) - m.start(2), "no colon after this key", "write " + cure);
      return;
    }
    if (!quoted(i, false)) {
      colon(i);
    }
  }

  private void tabs() {
    int first = -1;
    int more = -1;
    for (int i = 0; i < lines.size(); i++) {
      if (TAB.matcher(lines.get(i)).find()) {
        first = first < 0 ? i : first;
        more++;
      }
    }
    if (first >= 0) {
      Matcher m = TAB.matcher(lines.get(first));
      m.find();
      String hint = "set the editor to write blanks where the tab key is pressed";
      String said = "a tab before the first word; lines are moved in by blanks, two for each step";
      if (more > 0) {
        tell(
            first,
            0,
            m.end(),
            said,
            hint,
            "so with " + more + (more == 1 ? " more line" : " more lines"));
      } else {
        tell(first, 0, m.end(), said, hint);
      }
    }
  }

  /** A value in quotes that does not end with its line. */
  private boolean quoted(int i, boolean any) {
    String line = lines.get(i);
    Matcher braces = IN_BRACES.matcher(line);
    boolean found = false;
    while (braces.find()) {
      quote(i, braces.start(2), braces.group(1), braces.group(2));
      found = true;
    }
    Optional<Matcher> value = value(line);
    if (value.isPresent()) {
      Matcher m = value.get();
      String v = m.group(3);
      boolean open = (v.startsWith("'") || v.startsWith("\"")) && !QUOTED.matcher(v).matches();
      String bare = v.replaceAll("\\s+#.*$", "").strip();
      // Text may go on in the next line, a length does not.
      if (open && (any || bare.matches(".[0-9].*['\"]"))) {
        quote(i, m.start(3), m.group(2), bare);
        found = true;
      }
    }
    return found;
  }

  private static Optional<Matcher> value(String line) {
    for (Pattern p : List.of(KEY, LIST_ITEM)) {
      Matcher m = p.matcher(line);
      if (m.find()) {
        return Optional.of(m);
      }
    }
    return Optional.empty();
  }

  private void quote(int i, int from, String key, String value) {
    String mark = value.substring(0, 1);
    boolean closed = value.length() > 1 && value.endsWith(mark);
    String inside = value.substring(1, value.length() - (closed ? 1 : 0));
    String cure = plain(inside) ? inside : inQuotes(inside);
    boolean length = inside.matches("[0-9].*");
    String why =
        mark.equals("'") && value.endsWith("''")
            ? "inside single quotes '' stands for one ', so the text does not end here"
            : mark.equals("\"") && value.endsWith("\"\"")
                ? "the text has ended at the \" before this one"
                : "the quotes are not closed in this line";
    tell(
        i,
        from,
        value.codePointCount(0, value.length()),
        why + (length ? "; a length needs no quotes" : ""),
        "write " + (key.isEmpty() ? "- " : key + ": ") + cure);
  }

  /** A colon with a blank after it within a text that is not in quotes. */
  private void colon(int i) {
    String line = lines.get(i);
    String why = "a colon with a blank after it can't stand in a text without quotes";
    Matcher braces = COLON_IN_BRACES.matcher(line);
    if (braces.find()) {
      String v = braces.group(2).strip();
      tell(i, braces.start(2), v.length(), why, "write " + braces.group(1) + ": " + inQuotes(v));
      return;
    }
    Matcher m = KEY.matcher(line);
    if (!m.find()) {
      return;
    }
    String v = m.group(3).replaceAll("\\s+#.*$", "").strip();
    boolean bare = !v.isEmpty() && "\"'[{|>&*!#%@`".indexOf(v.charAt(0)) < 0;
    if (bare && (v.contains(": ") || v.endsWith(":"))) {
      tell(
          i,
          m.start(3),
          v.codePointCount(0, v.length()),
          why,
          "write " + m.group(2) + ": " + inQuotes(v));
    }
  }

  /** A brace that is not closed where the library wants it closed. */
  private boolean brace(int from) {
    for (int i = Math.min(from, lines.size() - 1); i >= 0 && i > from - 50; i--) {
      String line = lines.get(i).replaceAll("\\s#.*$", "");
      int open = -1;
      int depth = 0;
      for (int k = 0; k < line.length(); k++) {
        char c = line.charAt(k);
        if (c == '{' || c == '[') {
          open = depth++ == 0 ? k : open;
        } else if (c == '}' || c == ']') {
          depth--;
        }
      }
      if (depth > 0) {
        String close = line.charAt(open) == '{' ? "}" : "]";
        tell(
            i,
            open,
            1,
            "this " + line.charAt(open) + " is not closed; expected " + close + " in its line",
            "write " + line.strip() + close);
        return true;
      }
    }
    return false;
  }

  /** A line that begins where none above does. */
  private boolean indent(int at) {
    if (at < 0 || at >= lines.size()) {
      return false;
    }
    String line = lines.get(at);
    boolean dash = line.strip().startsWith("- ");
    int in = blanks(line);
    int bound = Integer.MAX_VALUE;
    int best = -1;
    int where = -1;
    for (int i = at - 1; i >= 0 && bound > 0; i--) {
      String above = lines.get(i);
      if (above.isBlank() || above.strip().startsWith("#")) {
        continue;
      }
      int own = blanks(above);
      boolean item = above.strip().startsWith("- ");
      int inner = item ? own + above.strip().replaceAll("^(-\\s+).*$", "$1").length() : own;
      int column = dash ? own : inner;
      if (column < bound
          && item | !dash
          && (best < 0 || Math.abs(column - in) < Math.abs(best - in))) {
        best = column;
        where = i;
      }
      if (item && !dash && own < bound) {
        bound = own;
      }
      bound = Math.min(bound, inner);
    }
    if (best < 0 || best == in) {
      return false;
    }
    String first = lines.get(where).strip();
    String word = first.replaceAll("^((?:- +)*[^\\s:]+:?).*$", "$1");
    tell(
        at,
        in,
        Math.max(1, line.strip().length()),
        "this line begins "
            + count(in)
            + " in, where no line above begins; expected "
            + count(best)
            + ", as "
            + (dash ? word : word.replaceAll("^(- +)*", ""))
            + " in line "
            + (where + 1),
        "what belongs together begins in one column");
    return true;
  }

  /** A text in quotes that runs on to where the library gave up. */
  private boolean unclosed(int last) {
    for (int i = Math.min(last, lines.size() - 1); i >= 0; i--) {
      if (!lines.get(i).strip().startsWith("#") && quoted(i, true)) {
        return true;
      }
    }
    return false;
  }

  private static String count(int blanks) {
    return blanks == 1 ? "1 blank" : blanks + " blanks";
  }

  private static int blanks(String line) {
    int n = 0;
    while (n < line.length() && line.charAt(n) == ' ') {
      n++;
    }
    return n;
  }

  /** Whether a text may stand without quotes. */
  private static boolean plain(String s) {
    return s.matches("[\\p{L}\\p{N}].*")
        && !s.contains(": ")
        && !s.contains(" #")
        && !s.endsWith(":");
  }

  /** A text in the quotes that suit it. */
  static String inQuotes(String s) {
    return s.contains("\"") || s.contains("\\")
        ? "'" + s.replace("'", "''") + "'"
        : "\"" + s + "\"";
  }

  /** Where {@code from} is counted in chars of the line. */
  private void tell(int line, int from, int length, String message, String... hints) {
    told++;
    int column = lines.get(line).codePointCount(0, from);
    Span span = text.onLine(line + 1, column + 1, length);
    problems.error(span, message, hints);
  }
}
