package headcourse.job.yaml;

import headcourse.diag.Span;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * The keys of one mapping. Every key asked for is known; {@link #done} refuses the rest. A value
 * that was refused is replaced by its default, so that reading goes on.
 */
final class Section {
  /** A whole number with the comma that stands right before a key. */
  private static final Pattern DECIMAL = Pattern.compile("([0-9]+),$");

  final Reading in;
  final String path;
  private final Map<String, NodeTuple> tuples = new LinkedHashMap<>();
  private final List<String> known = new ArrayList<>();

  Section(Reading in, String path, MappingNode node) {
    this.in = in;
    this.path = path;
    if (node != null) {
      for (NodeTuple t : node.getValue()) {
        if (t.getKeyNode() instanceof ScalarNode s) {
          tuples.putIfAbsent(s.getValue(), t);
        }
      }
    }
  }

  String at(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** The value of a key, or null where the file does not give it. */
  Item item(String key) {
    known.add(key);
    if (in.asked != null) {
      return in.asked.item(this, key);
    }
    NodeTuple t = tuples.get(key);
    return t == null ? null : new Item(in, at(key), t.getValueNode());
  }

  /** A value read in some way, or the default. */
  <T> T get(String key, T otherwise, Function<Item, T> reader) {
    Item item = item(key);
    T value = item == null ? null : reader.apply(item);
    return value == null ? otherwise : value;
  }

  String text(String key) {
    return get(key, "", Item::text);
  }

  Length length(String key, Range range, Length otherwise) {
    return get(key, otherwise, i -> i.length(range));
  }

  /** A length that must be there. */
  Length needed(String key, Range range, String what, Length otherwise) {
    Length v = length(key, range, null);
    if (in.asked != null) {
      in.asked.needed(at(key));
      return otherwise;
    }
    if (v == null && !tuples.containsKey(key) && !misspelt(key)) {
      in.error(at(key), what + " is missing; expected " + key + ": with a length");
    }
    return v == null ? otherwise : v;
  }

  Angle angle(String key, Angle otherwise) {
    return get(key, otherwise, Item::angle);
  }

  long whole(String key, long min, long max, long otherwise) {
    return get(key, otherwise, i -> i.whole(min, max));
  }

  String word(String key, List<String> words, String otherwise) {
    return get(key, otherwise, i -> i.word(words));
  }

  boolean flag(String key, boolean otherwise) {
    return word(key, List.of("true", "false"), Boolean.toString(otherwise)).equals("true");
  }

  /** The keys of an inner mapping; an empty one where it is not given. */
  Section section(String key) {
    Item item = item(key);
    return item == null ? new Section(in, at(key), null) : item.section();
  }

  List<Item> list(String key) {
    Item item = item(key);
    return item == null ? List.of() : item.list();
  }

  /** Whether a key that is not given stands there misspelt, and is told as such. */
  boolean misspelt(String key) {
    return keys().stream().anyMatch(k -> Nearest.to(k, List.of(key)).isPresent());
  }

  boolean has(String key) {
    return in.asked == null ? tuples.containsKey(key) : in.asked.there(at(key));
  }

  /** The plain text of a key's value, or null; not read, only looked at. */
  String scalar(String key) {
    NodeTuple t = tuples.get(key);
    return t != null && t.getValueNode() instanceof ScalarNode n ? n.getValue().strip() : null;
  }

  /** The keys as the file has them. */
  List<String> keys() {
    return in.asked == null ? List.copyOf(tuples.keySet()) : List.of(Asked.STONE);
  }

  /** What stands right before a place, as far as a number goes. */
  private static String before(Span span) {
    String line = span.source().lines().get(span.line() - 1);
    int at = line.offsetByCodePoints(0, span.column() - 1);
    return line.substring(Math.max(0, at - 12), at);
  }

  /**
   * Tells a key that is only part of what was meant: a decimal comma, or no blank after a colon.
   */
  private boolean slip(String key, Span span) {
    Matcher whole = DECIMAL.matcher(before(span));
    if (key.length() <= 20 && key.matches("[0-9]+(\\s*[a-z\"']+)?") && whole.find()) {
      String number = whole.group(1) + "," + key;
      Span both =
          in.text.onLine(
              span.line(),
              span.column() - whole.group().length(),
              number.codePointCount(0, number.length()));
      in.error(
          at(key),
          both,
          Reading.quoted(number) + ": within braces a comma begins the next key",
          "write " + whole.group(1) + "." + key);
      return true;
    }
    int colon = key.indexOf(':');
    if (colon > 0 && known.contains(key.substring(0, colon))) {
      in.error(at(key), span, "no blank after the colon", "write " + key.replaceFirst(":", ": "));
      return true;
    }
    return false;
  }

  /** Refuses every key that nobody asked for. */
  void done() {
    done(key -> null);
  }

  /** The same, with words of its own for some keys; null for the usual ones. */
  void done(Function<String, String> instead) {
    int told = 0;
    for (Map.Entry<String, NodeTuple> e : tuples.entrySet()) {
      String key = e.getKey();
      if (known.contains(key)) {
        continue;
      }
      if (told++ >= Problems.MOST) {
        return;
      }
      var span = in.text.of(e.getValue().getKeyNode());
      if (slip(key, span)) {
        continue;
      }
      String own = instead.apply(key);
      String where = path.isEmpty() ? "a job" : path;
      String message =
          own != null
              ? own
              : "unknown key "
                  + Reading.quoted(key)
                  + " in "
                  + where
                  + "; expected "
                  + String.join(", ", known);
      Optional<String> near = own == null ? Nearest.to(key, known) : Optional.empty();
      List<String> hints =
          near.map(n -> List.of("did you mean " + n + "?"))
              .orElseGet(() -> own == null ? in.elsewhere(key) : List.of());
      in.error(at(key), span, message, hints.toArray(String[]::new));
    }
  }
}
