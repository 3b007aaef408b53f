package headcourse.job.yaml;

import headcourse.diag.Span;
import headcourse.job.yaml.KeyTable.Form;
import headcourse.job.yaml.KeyTable.Kind;
import headcourse.job.yaml.KeyTable.Value;
import headcourse.units.Angle;
import headcourse.units.AngleParser;
import headcourse.units.Length;
import headcourse.units.NotationException;
import headcourse.units.NumberParser;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** A value of the file with its path. What can't be read as asked is a problem and gives null. */
record Item(Reading in, String path, Node node) {
  /** Longer lists are no part of a job. */
  private static final int MOST_ITEMS = 10_000;

  Item {
    in.spans.put(path, in.text.of(node));
  }

  Span span() {
    return in.text.of(node);
  }

  boolean isMap() {
    if (in.asked != null) {
      in.asked.may(path, Kind.KEYS);
    }
    return node instanceof MappingNode;
  }

  boolean isList() {
    if (in.asked != null) {
      in.asked.may(path, Kind.LIST);
    }
    return node instanceof SequenceNode;
  }

  void error(String message, String... hints) {
    in.error(path, span(), message, hints);
  }

  /** The text of a scalar as written; may be empty. */
  String raw(String expected) {
    if (in.asked != null) {
      in.asked.value(path, Value.of(Form.OTHER, expected));
      return Asked.MARK;
    }
    if (node instanceof ScalarNode s) {
      return s.getValue().strip();
    }
    error((isMap() ? "keys" : "a list") + " where one value belongs; expected " + expected);
    return null;
  }

  /** A text for paper: one line, no more than 200 characters. */
  String text() {
    if (asks(Value.of(Form.TEXT, ""))) {
      return null;
    }
    if (node instanceof MappingNode m && m.getFlowStyle() == FlowStyle.BLOCK) {
      String line = span().source().lines().get(span().line() - 1);
      String whole = line.substring(line.offsetByCodePoints(0, span().column() - 1)).strip();
      error(
          "a colon with a blank after it makes keys of this text; expected quotes around it",
          "write " + Slips.inQuotes(whole));
      return null;
    }
    String s = raw("a text");
    if (s == null || s.equals("~")) {
      return s == null ? null : "";
    }
    String one = s.replaceAll("\\s+", " ");
    if (one.length() > 200) {
      error("a text of " + one.length() + " characters; at most 200 fit on a sheet");
      return null;
    }
    return one;
  }

  String word(List<String> words) {
    if (in.asked != null) {
      return in.asked.word(path, words);
    }
    String s = raw("one of " + String.join(", ", words));
    Optional<String> meant = s == null ? Optional.empty() : Spelling.of(s, words);
    if (s == null || meant.isPresent()) {
      return meant.orElse(null);
    }
    error(
        Reading.quoted(s) + " is not known here; expected " + String.join(", ", words),
        Nearest.to(s, words)
            .map(w -> new String[] {"did you mean " + w + "?"})
            .orElseGet(() -> new String[0]));
    return null;
  }

  Length length(Range range) {
    if (asks(Value.length(range.min(), range.max()))) {
      return null;
    }
    String s = raw("a length");
    return s == null ? null : Lengths.read(s, range, in, this::error);
  }

  Angle angle() {
    if (asks(Value.of(Form.ANGLE, ""))) {
      return null;
    }
    String s = raw("an angle");
    return s == null ? null : parsed(s, t -> AngleParser.parse(t, in.units));
  }

  Double number(double min, double max) {
    if (asks(Value.number(Form.NUMBER, min, max))) {
      return null;
    }
    String s = raw("a number");
    Double v = s == null ? null : parsed(s, NumberParser::parse);
    if (v != null && (v < min || v > max)) {
      error(Reading.quoted(s) + " is out of range; expected " + say(min) + " to " + say(max));
      return null;
    }
    return v;
  }

  Long whole(long min, long max) {
    if (asks(Value.number(Form.WHOLE, min, max))) {
      return null;
    }
    String s = raw("a whole number");
    if (s == null) {
      return null;
    }
    if (!s.matches("[+-]?[0-9]{1,18}") || Long.parseLong(s) < min || Long.parseLong(s) > max) {
      error(Reading.quoted(s) + " will not do; expected a whole number from " + min + " to " + max);
      return null;
    }
    return Long.parseLong(s);
  }

  /** Reads a text by a parser that says what is wrong. */
  <T> T parsed(String s, Parser<T> parser) {
    try {
      return parser.parse(s);
    } catch (NotationException e) {
      error(Reading.quoted(s) + ": " + e.getMessage());
      return null;
    }
  }

  /** The items of a list. */
  List<Item> list() {
    if (in.asked != null) {
      in.asked.may(path, Kind.LIST);
    }
    List<Item> items = new ArrayList<>();
    if (node instanceof SequenceNode s && s.getValue().size() > MOST_ITEMS) {
      error("a list of " + s.getValue().size() + "; expected at most " + MOST_ITEMS);
    } else if (node instanceof SequenceNode s) {
      for (int i = 0; i < s.getValue().size(); i++) {
        items.add(new Item(in, path + "[" + i + "]", s.getValue().get(i)));
      }
    } else {
      String alone = node instanceof ScalarNode n ? n.getValue() : "{...}";
      if (alone.isBlank()) {
        error("nothing stands under this key; expected a list, or leave it out");
      } else {
        error(
            "expected a list, as [a, b] or lines that begin with -",
            "one alone stands in brackets, too: [" + alone.strip() + "]");
      }
    }
    return items;
  }

  /** An item of a list that has so many. */
  Item at(int number) {
    String at = path + "[" + number + "]";
    return new Item(in, at, ((SequenceNode) node).getValue().get(number));
  }

  /** The keys of a mapping; none where it is something else. */
  Section section() {
    if (in.asked != null) {
      in.asked.may(path, Kind.KEYS);
    }
    if (node instanceof MappingNode m) {
      if (in.asked != null) {
        in.asked.opened(path);
      }
      return new Section(in, path, m);
    }
    boolean empty = node instanceof ScalarNode n && n.getValue().isBlank();
    String s = node instanceof ScalarNode n ? n.getValue() : "";
    if (s.matches("[a-z][a-z-]*:[^\\s/].*")) {
      error("no blank after the colon", "write " + s.replaceFirst(":", ": "));
      return new Section(in, path, null);
    }
    error(
        empty
            ? "nothing stands under this key; expected keys with values, or leave it out"
            : "expected keys with values, as {key: value}");
    return new Section(in, path, null);
  }

  /** Notes how a value is read, where only that is wanted. */
  private boolean asks(Value value) {
    if (in.asked != null) {
      in.asked.value(path, value);
    }
    return in.asked != null;
  }

  private static String say(double d) {
    return d == Math.rint(d) && Math.abs(d) < 1e9 ? Long.toString((long) d) : Double.toString(d);
  }

  /** A way to read a text. */
  interface Parser<T> {
    T parse(String text) throws NotationException;
  }
}
