package headcourse.job.yaml;

import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.ShapeDef;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.job.Vary;
import headcourse.job.Vary.Dial;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.NotationException;
import headcourse.units.NumberParser;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads {@code vary:}, what of a head may vary when one is chosen. */
final class VaryReader {
  /** More values of one thing than this are a slip of the pen. */
  private static final int MOST_VALUES = 1000;

  /** More combinations than this take too long. */
  private static final int MOST_COMBINATIONS = 10_000;

  private static final String RANGE = "\\.\\.";

  private final Reading in;
  private final List<Dial> dials = new ArrayList<>();

  private VaryReader(Reading in) {
    this.in = in;
  }

  static Vary read(Section s, List<ShapeDef> shapes) {
    VaryReader r = new VaryReader(s.in);
    r.words(s, "shape", "shape", shapes.stream().map(ShapeDef::name).toList());
    List<String> rhythms =
        Stream.of(Rhythm.values()).filter(v -> v != Rhythm.FROM_STOCK).map(Rhythm::word).toList();
    r.words(s, "rhythm", "stones.rhythm", rhythms);
    r.lengths(s, "height", "height", Range.POSITIVE.cut());
    Section key = s.section("key");
    r.lengths(key, "bottom", "key.bottom", Range.POSITIVE.cut());
    r.lengths(key, "top", "key.top", Range.POSITIVE.cut());
    r.lengths(key, "rise", "key.rise", Range.NOT_NEGATIVE.cut());
    key.done();
    r.joints(s);
    List<String> done = new ArrayList<>();
    for (ShapeDef shape : shapes) {
      for (ParamDef p : shape.params()) {
        if (!done.contains(p.name())) {
          done.add(p.name());
          r.param(s, p);
        }
      }
    }
    double[] proportion = r.proportion(s.item("proportion"));
    s.done();
    Vary vary = new Vary(r.dials, proportion[0], proportion[1]);
    if (vary.combinations() > MOST_COMBINATIONS) {
      s.in.error(
          s.path,
          "vary asks for more than "
              + MOST_COMBINATIONS
              + " combinations; expected fewer values, or wider steps, as 6..12 by 1/2");
    }
    return vary;
  }

  private void words(Section s, String key, String as, List<String> words) {
    values(s.item(key), as, i -> i.word(words));
  }

  private void joints(Section s) {
    Range width = new Range(Length.ZERO, Length.inches(2), true);
    values(
        s.item("joints"),
        "joints",
        i -> {
          String raw = i.raw("dry, or the width of a mortar joint");
          return raw == null || raw.equals("dry") ? raw : text(i.length(width), raw);
        });
  }

  private void param(Section s, ParamDef def) {
    if (def.kind() == ShapeDef.Kind.LENGTH) {
      lengths(s, def.name(), def.name(), Range.NOT_NEGATIVE);
    } else {
      values(
          s.item(def.name()),
          def.name(),
          i -> ParamReader.read(i, def) == null ? null : i.raw("a value"));
    }
  }

  private static String text(Length read, String raw) {
    return read == null ? null : raw;
  }

  private void values(Item item, String as, Function<Item, String> reader) {
    if (item == null) {
      return;
    }
    List<String> values = new ArrayList<>();
    for (Item i : item.isList() ? item.list() : List.of(item)) {
      String v = reader.apply(i);
      if (v != null && !values.contains(v)) {
        values.add(v);
      }
    }
    add(item, as, values);
  }

  private void lengths(Section s, String key, String as, Range range) {
    Item item = s.item(key);
    if (item == null) {
      return;
    }
    List<String> values = new ArrayList<>();
    for (Item i : item.isList() ? item.list() : List.of(item)) {
      String raw = i.raw("a length, or a range as 6..12");
      if (raw == null) {
        continue;
      }
      for (String v : raw.contains("..") ? range(i, raw, range) : plain(i, raw, range)) {
        if (!values.contains(v)) {
          values.add(v);
        }
      }
    }
    add(item, as, values);
  }

  private static List<String> plain(Item i, String raw, Range range) {
    return i.length(range) == null ? List.of() : List.of(raw);
  }

  /** {@code 6..12}, on every step of the grid, or {@code 6..12 by 1/2}. */
  private List<String> range(Item item, String raw, Range range) {
    String[] by = raw.split("\\s+by\\s+", 2);
    String[] ends = by[0].split(RANGE, 2);
    Length from = Lengths.read(ends[0].strip(), range.cut(), in, item::error);
    Length to = Lengths.read(ends[1].strip(), range.cut(), in, item::error);
    Length step =
        by.length == 1
            ? in.grid.tick()
            : Lengths.read(by[1].strip(), Range.POSITIVE.cut(), in, item::error);
    if (from == null || to == null || step == null) {
      return List.of();
    }
    if (from.compareTo(to) > 0) {
      item.error(Reading.quoted(raw) + " runs backwards; expected the lesser first, as 6..12");
      return List.of();
    }
    long steps = to.minus(from).picometres() / step.picometres();
    if (steps >= MOST_VALUES) {
      item.error(
          Reading.quoted(raw)
              + " has "
              + (steps + 1)
              + " values; expected at most "
              + MOST_VALUES
              + ", or a step, as 6..12 by 1/2");
      return List.of();
    }
    LengthFormat format = new LengthFormat(in.units, in.grid);
    List<String> values = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      values.add(format.plain(from.plus(step.times(i))));
    }
    return values;
  }

  private void add(Item item, String as, List<String> values) {
    if (!values.isEmpty()) {
      dials.add(new Dial(as, values));
    } else if (item.isList() && item.list().isEmpty()) {
      item.error("an empty list; expected values, or leave the key out");
    }
  }

  /** {@code 1.1..1.4}. */
  private double[] proportion(Item item) {
    double[] usual = {Vary.LEAST, Vary.MOST};
    String raw = item == null ? null : item.raw("a range, as 1.1..1.4");
    if (raw == null) {
      return usual;
    }
    try {
      String[] ends = raw.split(RANGE, 2);
      double least = NumberParser.parse(ends[0].strip());
      double most = ends.length == 1 ? least : NumberParser.parse(ends[1].strip());
      if (least > 0 && least <= most && most <= 100) {
        return new double[] {least, most};
      }
    } catch (NotationException e) {
      // Said below, as of any other thing that is no range.
    }
    item.error(
        Reading.quoted(raw)
            + " will not do; expected a range of key to stone, the lesser first, as 1.1..1.4");
    return usual;
  }
}
