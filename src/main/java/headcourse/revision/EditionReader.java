package headcourse.revision;

import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.diag.Span;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Reads the {@code layout.json} of an earlier revision. */
public final class EditionReader {
  /** Larger files than this are not read. */
  private static final int MOST = 4 << 20;

  /** The form of the file that is understood; fields are only ever added to it. */
  private static final double FORMAT = 1;

  private static final int LONGEST = 200;

  private final Map<String, String> stockOf = new TreeMap<>();

  private EditionReader() {}

  /**
   * Reads a file.
   *
   * @param name what the job calls it
   * @param bytes its content
   * @param span where the job names it
   */
  public static Outcome<Edition> read(String name, byte[] bytes, Span span) {
    try {
      if (bytes.length > MOST) {
        throw new Json.Fault("it is larger than 4 MB");
      }
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Outcome.of(new EditionReader().edition(Json.parse(text)), List.of());
    } catch (CharacterCodingException e) {
      return refused(name, "it is not UTF-8", span);
    } catch (Json.Fault e) {
      return refused(name, e.getMessage(), span);
    }
  }

  private static Outcome<Edition> refused(String name, String reason, Span span) {
    return Outcome.failed(
        List.of(
            Diagnostic.error(
                span,
                name + " can't be compared with: " + reason,
                "name the layout.json that headcourse wrote for the revision before")));
  }

  private Edition edition(Json root) throws Json.Fault {
    if (number(root, "format") != FORMAT) {
      throw new Json.Fault("its format is not 1");
    }
    for (Json blank : items(root, "blanks")) {
      String stock = text(blank, "stock");
      for (Json cut : items(blank, "stones")) {
        stockOf.putIfAbsent(text(cut, "mark"), stock);
      }
    }
    List<Edition.Opening> openings = new ArrayList<>();
    Set<String> marks = new HashSet<>();
    Set<String> stones = new HashSet<>();
    for (Json o : items(root, "openings")) {
      openings.add(opening(o, marks, stones));
    }
    Json job = root.get("job").orElseThrow(() -> missing("job"));
    return new Edition(text(job, "revision"), openings);
  }

  private Edition.Opening opening(Json o, Set<String> marks, Set<String> stoneMarks)
      throws Json.Fault {
    Json head = o.get("head").orElseThrow(() -> missing("head"));
    Map<Property, Value> v = new EnumMap<>(Property.class);
    put(v, o, Property.COUNT, Property.WIDTH, Property.BEARING_LEFT, Property.BEARING_RIGHT);
    put(v, head, Property.HEIGHT);
    v.put(Property.SHAPE, Value.of(text(head, "shape")));
    for (Property p : List.of(Property.RADIUS, Property.STRIKING)) {
      if (head.get(p.word()).isPresent()) {
        put(v, head, p);
      }
    }
    List<Edition.Stone> stones = new ArrayList<>();
    for (Json s : items(o, "stones")) {
      stones.add(stone(s, stoneMarks));
    }
    return new Edition.Opening(mark(o, marks), v, stones);
  }

  private Edition.Stone stone(Json s, Set<String> marks) throws Json.Fault {
    Map<Property, Value> v = new EnumMap<>(Property.class);
    put(
        v,
        s,
        Property.BOTTOM,
        Property.TOP,
        Property.HEIGHT,
        Property.RAKE_INNER,
        Property.RAKE_OUTER,
        Property.THICKNESS,
        Property.RETURN,
        Property.RELIEF,
        Property.PROUD);
    List<Double> heights = new ArrayList<>();
    List<Double> screws = new ArrayList<>();
    for (Json n : items(s, "notches")) {
      heights.add(number(n, "heightMm"));
      if (n.get("screwMm").isPresent()) {
        screws.add(number(n, "screwMm"));
      }
    }
    v.put(Property.NOTCHES, new Value("", heights));
    v.put(Property.SCREWS, new Value("", screws));
    String mark = mark(s, marks);
    if (stockOf.containsKey(mark)) {
      v.put(Property.STOCK, Value.of(stockOf.get(mark)));
    }
    return new Edition.Stone(mark, v);
  }

  private static void put(Map<Property, Value> values, Json from, Property... some)
      throws Json.Fault {
    for (Property p : some) {
      values.put(p, Value.of(number(from, p.word())));
    }
  }

  private static String mark(Json from, Set<String> marks) throws Json.Fault {
    String mark = text(from, "mark");
    if (mark.isEmpty() || !marks.add(mark)) {
      throw new Json.Fault("a mark is empty or stands twice");
    }
    return mark;
  }

  private static Json.Fault missing(String name) {
    return new Json.Fault("it has no " + name);
  }

  private static List<Json> items(Json from, String name) throws Json.Fault {
    if (from.get(name).orElseThrow(() -> missing(name)) instanceof Json.Items i) {
      return i.list();
    }
    throw new Json.Fault(name + " is not a list");
  }

  /** A text that may be printed. */
  private static String text(Json from, String name) throws Json.Fault {
    if (from.get(name).orElseThrow(() -> missing(name)) instanceof Json.Text t
        && t.value().length() <= LONGEST
        && t.value().codePoints().allMatch(EditionReader::printed)) {
      return t.value();
    }
    throw new Json.Fault(name + " is not a short text");
  }

  /** What every font of the sheets can write. */
  private static boolean printed(int c) {
    return c >= ' ' && c < 0x7F || c >= 0xA0 && c < 0x180;
  }

  private static double number(Json from, String name) throws Json.Fault {
    // A kilometre, and its like in any unit: longer than any head.
    if (from.get(name).orElseThrow(() -> missing(name)) instanceof Json.Number n
        && Math.abs(n.value()) <= 1e6) {
      return n.value();
    }
    throw new Json.Fault(name + " is not a number within reason");
  }
}
