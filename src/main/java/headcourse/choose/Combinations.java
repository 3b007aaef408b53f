package headcourse.choose;

import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.job.HeadSpec;
import headcourse.job.HeadSpec.Rhythm;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.job.Vary;
import headcourse.layout.shapes.Shapes;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.LengthParser;
import headcourse.units.NotationException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** All combinations of what an opening's head may vary in, each written into the job and read. */
final class Combinations {
  private final Job base;
  private final int number;
  private final Opening opening;
  private final Vary vary;
  private final LengthFormat format;
  private final List<Combination> read = new ArrayList<>();
  private final List<String> refused = new ArrayList<>();
  private final Map<Settings, Outcome<Job>> texts = new HashMap<>();

  /**
   * Combinations for an opening.
   *
   * @param base the job as it is without a choice
   * @param number the opening's
   */
  Combinations(Job base, int number) {
    this.base = base;
    this.number = number;
    this.opening = base.openings().get(number);
    this.vary = opening.choosing().vary();
    this.format = new LengthFormat(base.units(), base.grid());
    Set<Settings> all = new LinkedHashSet<>();
    turn(0, Settings.NONE, all);
    all.forEach(this::read);
  }

  /** Those that a job can be read with. */
  List<Combination> read() {
    return read;
  }

  /** Why others can't, once each. */
  List<String> refused() {
    return refused.stream().distinct().toList();
  }

  private void turn(int dial, Settings raw, Set<Settings> all) {
    if (dial == vary.dials().size()) {
      all.add(settings(raw));
      return;
    }
    Vary.Dial d = vary.dials().get(dial);
    for (String value : d.values()) {
      turn(dial + 1, raw.with(d.key(), value), all);
    }
  }

  /** The settings that some values of the dials come to; what another shape has is left out. */
  private Settings settings(Settings raw) {
    String shape = raw.values().getOrDefault("shape", opening.head().shape());
    List<String> own =
        Shapes.named(shape).orElseThrow().definition().params().stream()
            .map(ParamDef::name)
            .toList();
    Settings out = Settings.NONE;
    for (var e : raw.values().entrySet()) {
      String key = e.getKey();
      if (key.equals("joints")) {
        boolean dry = e.getValue().equals("dry");
        out = out.with("joints", dry ? "dry" : "mortar").with("joint", dry ? "0" : e.getValue());
      } else if (key.equals("shape")
          || key.equals("height")
          || key.equals("stones.rhythm")
          || own.contains(key)) {
        out = out.with(key, e.getValue());
      }
    }
    Rhythm rhythm = opening.head().stones().rhythm();
    boolean graded = out.values().getOrDefault("stones.rhythm", rhythm.word()).equals("graded");
    Length step = opening.head().stones().step();
    if (!graded && step.picometres() < 0) {
      // Only graded widths may grow.
      out = out.with("stones.step", plain(step.abs()));
    }
    boolean keyed = raw.values().keySet().stream().anyMatch(k -> k.startsWith("key."));
    return keyed || !shape.equals(opening.head().shape()) ? key(out, raw, shape) : out;
  }

  /**
   * A soldier's key keeps its taper; of any other the fan, or the curve, makes the second width.
   */
  private Settings key(Settings out, Settings raw, String shape) {
    HeadSpec.Key key = opening.head().key();
    String bottom = raw.values().get("key.bottom");
    String top = raw.values().get("key.top");
    if (key == null && bottom == null && top == null) {
      return out;
    }
    boolean soldier = shape.equals("soldier");
    HeadSpec.Key was =
        key == null ? new HeadSpec.Key(null, null, Length.ZERO, Length.ZERO, Length.ZERO) : key;
    if (soldier) {
      HeadSpec.Key both = upright(bottom, top, was);
      bottom = plain(both.bottom());
      top = plain(both.top());
    } else {
      bottom = bottom == null && top == null && was.bottom() != null ? plain(was.bottom()) : bottom;
      top = bottom == null && top == null && was.top() != null ? plain(was.top()) : top;
    }
    Settings all = out;
    all = bottom == null ? all : all.with("key.bottom", bottom);
    all = top == null || !soldier && bottom != null ? all : all.with("key.top", top);
    all = all.with("key.rise", raw.values().getOrDefault("key.rise", plain(was.rise())));
    return all.with("key.drop", plain(was.drop())).with("key.proud", plain(was.proud()));
  }

  /** Both widths of a soldier's key, of which what varies may be one, or none. */
  private HeadSpec.Key upright(String bottom, String top, HeadSpec.Key was) {
    Length low = bottom == null ? null : parsed(bottom);
    Length high = top == null ? null : parsed(top);
    boolean both = was.bottom() != null && was.top() != null;
    if (low == null && high == null) {
      low = was.bottom();
      high = was.top();
    } else if (high == null) {
      high = both ? low.plus(was.top().minus(was.bottom())) : was.top();
    } else if (low == null && base.spans().given(opening.path() + ".head.key.bottom")) {
      low = was.bottom();
    }
    return new HeadSpec.Key(low, high, was.rise(), was.drop(), was.proud())
        .upright(base.units(), base.grid());
  }

  private Length parsed(String text) {
    try {
      return LengthParser.parse(text, base.units());
    } catch (NotationException e) {
      throw new IllegalStateException("a length that the reader took: " + text, e);
    }
  }

  private String plain(Length length) {
    return format.plain(length);
  }

  /** Key and height are set in the record; what other values may depend on is read. */
  private void read(Settings settings) {
    Settings written = settings.without(Combinations::measured);
    Outcome<Job> job =
        texts.computeIfAbsent(
            written,
            w ->
                w.values().isEmpty()
                    ? Outcome.of(base, List.of())
                    : base.spans().rewriting().with(w.changes(opening.path())));
    if (job.value().isEmpty()) {
      job.diagnostics().stream().limit(1).map(Diagnostic::message).forEach(refused::add);
      return;
    }
    Job alone = job.value().get().alone(number);
    HeadSpec head = alone.openings().get(0).head();
    if (settings.values().containsKey("height")) {
      head = head.withHeight(parsed(settings.values().get("height")));
    }
    if (settings.values().keySet().stream().anyMatch(k -> k.startsWith("key."))) {
      head =
          head.with(
              new HeadSpec.Key(
                  measure(settings, "key.bottom"),
                  measure(settings, "key.top"),
                  measure(settings, "key.rise"),
                  measure(settings, "key.drop"),
                  measure(settings, "key.proud")));
    }
    read.add(
        new Combination(settings, alone.withOpenings(List.of(alone.openings().get(0).with(head)))));
  }

  private Length measure(Settings settings, String key) {
    String text = settings.values().get(key);
    return text == null ? null : parsed(text);
  }

  private static boolean measured(String key) {
    return key.equals("height") || key.startsWith("key.");
  }
}
