package headcourse.job.yaml;

import headcourse.job.yaml.KeyTable.Kind;
import headcourse.job.yaml.KeyTable.Value;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * What the readers ask of a file. They read a file that has every key they ask for, and what stands
 * there is noted. Where a value may be of several kinds, or a word of several, each has its turn in
 * one of many rounds, because what is asked next may hang on it.
 */
final class Asked {
  /** What a mark reads as in such a file, and a stone's mark below it. */
  static final String MARK = "1";

  static final String STONE = "L1";

  private static final Mark NOWHERE = new Mark("", 0, 0, 0, new int[] {'\n'}, 0);

  /** What was asked of one place. */
  static final class Place {
    final Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    final Set<Value> values = new LinkedHashSet<>();
    int opened;
    int needed;
  }

  private final Map<String, Place> places = new LinkedHashMap<>();
  private int round;

  Map<String, Place> places() {
    return places;
  }

  void round(int number) {
    round = number;
  }

  private Place place(String path) {
    return places.computeIfAbsent(path, p -> new Place());
  }

  /** Whether a key is there: in half of the rounds, each key in others. */
  boolean there(String path) {
    int mixed = (path.hashCode() ^ round * 0x9E3779B1) * 0x85EBCA6B;
    return (mixed >>> 15 & 1) == 1;
  }

  Item item(Section section, String key) {
    String path = section.at(key);
    place(path);
    return new Item(section.in, path, node(path));
  }

  private Node node(String path) {
    List<Kind> kinds = new ArrayList<>(place(path).kinds);
    Kind kind =
        kinds.isEmpty()
            ? Kind.VALUE
            : kinds.get(Math.floorMod(round + path.length(), kinds.size()));
    return switch (kind) {
      case VALUE -> new ScalarNode(Tag.STR, true, MARK, NOWHERE, NOWHERE, ScalarStyle.PLAIN);
      case KEYS ->
          new MappingNode(Tag.MAP, true, new ArrayList<>(), NOWHERE, NOWHERE, FlowStyle.FLOW);
      case LIST ->
          new SequenceNode(
              Tag.SEQ,
              true,
              new ArrayList<>(List.of(node(path + "[0]"))),
              NOWHERE,
              NOWHERE,
              FlowStyle.FLOW);
    };
  }

  void may(String path, Kind kind) {
    place(path).kinds.add(kind);
  }

  /** The keys of a place are asked for. */
  void opened(String path) {
    place(path).opened++;
  }

  void needed(String path) {
    place(path).needed++;
  }

  void value(String path, Value value) {
    may(path, Kind.VALUE);
    place(path).values.add(value);
  }

  /** One of the words, in each round another. */
  String word(String path, List<String> words) {
    value(path, Value.word(words));
    return words.get(round % words.size());
  }
}
