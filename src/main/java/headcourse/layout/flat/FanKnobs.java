package headcourse.layout.flat;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Params;
import headcourse.units.Angle;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;

/** The value of a jack arch that says where its joints are struck from. */
final class FanKnobs {
  /** Parts of a skewback's degree. */
  private static final int DEGREE = 2;

  /** A rake is turned by 1/32 in over 4 in. */
  private static final int RAKE = 128;

  /** Half an inch over 4 in, which is usual. */
  private static final int USUAL = RAKE / 8;

  private final Job job;
  private final Opening opening;
  private final LengthFormat format;

  private FanKnobs(FlatTerms terms, LengthFormat format) {
    this.job = terms.job();
    this.opening = terms.opening();
    this.format = format;
  }

  static void addTo(List<Knob> knobs, FlatTerms terms, LengthFormat format) {
    if (terms.head().shape().equals("jack")) {
      knobs.add(new FanKnobs(terms, format).knob());
    }
  }

  private Knob knob() {
    Params params = opening.head().params();
    if (params.angle("skewback").isPresent()) {
      long base = Math.round(params.angle("skewback").get().degrees() * DEGREE);
      return knob(
          "skewback",
          base,
          30L * DEGREE,
          88L * DEGREE,
          v -> Angle.degrees((double) v / DEGREE),
          v -> v % DEGREE == 0 ? Long.toString(v / DEGREE) : v / DEGREE + ".5");
    }
    if (params.length("striking").isPresent()) {
      Grid grid = job.grid();
      long unit = Math.max(1, grid.nearest(Length.inches(0.25)));
      long base = grid.nearest(params.length("striking").get()) / unit;
      return knob(
          "striking",
          base,
          base / 3,
          3 * base,
          v -> grid.ticks(v * unit),
          v -> format.plain(grid.ticks(v * unit)));
    }
    long base = params.angle("rake").map(a -> Math.round(a.tan() * RAKE)).orElse((long) USUAL);
    boolean inches = job.units() == Units.INCH;
    return knob(
        "rake",
        base,
        1,
        3 * base,
        v -> Angle.ofRate(v, RAKE),
        v -> inches ? inches(v) + " in 4" : v + ":" + RAKE);
  }

  private Knob knob(
      String key,
      long base,
      long least,
      long most,
      LongFunction<Object> value,
      LongFunction<String> text) {
    return new Knob(
        opening.path() + ".head." + key,
        base,
        0,
        Math.max(base - least, most - base),
        base,
        v -> v < least || v > most ? null : new Knob.Asked(job, with(key, value.apply(v))),
        text,
        h -> "",
        "strikes the joints from another depth");
  }

  /** Thirty-seconds of an inch, which need not be on the job's grid. */
  private static String inches(long v) {
    long part = v % 32;
    if (part == 0) {
      return Long.toString(v / 32);
    }
    long twos = Long.lowestOneBit(part);
    String fraction = part / twos + "/" + 32 / twos;
    return v < 32 ? fraction : v / 32 + " " + fraction;
  }

  private Opening with(String key, Object value) {
    Map<String, Object> all = new HashMap<>(opening.head().params().values());
    all.put(key, value);
    return Edits.params(opening, new Params(all));
  }
}
