package headcourse.cure;

import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Params;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import java.util.List;
import java.util.function.LongFunction;

/** The value of a jack arch that says where its joints are struck from. */
record FanDial(Job job, Opening opening) {
  /** Parts of a skewback's degree. */
  private static final int DEGREE = 2;

  /** A rake is turned by 1/32 in over 4 in. */
  private static final int RAKE = 128;

  /** Half an inch over 4 in, which is usual. */
  private static final int USUAL = RAKE / 8;

  Dial dial() {
    Params params = opening.head().params();
    if (params.angle("skewback").isPresent()) {
      long base = Math.round(params.angle("skewback").get().degrees() * DEGREE);
      return dial(
          "skewback",
          base,
          30L * DEGREE,
          88L * DEGREE,
          v -> v % DEGREE == 0 ? Long.toString(v / DEGREE) : v / DEGREE + ".5");
    }
    if (params.length("striking").isPresent()) {
      Grid grid = job.grid();
      LengthFormat format = new LengthFormat(job.units(), grid);
      long unit = Math.max(1, grid.nearest(Length.inches(0.25)));
      long base = grid.nearest(params.length("striking").get()) / unit;
      return dial("striking", base, base / 3, 3 * base, v -> format.plain(grid.ticks(v * unit)));
    }
    long base = params.angle("rake").map(a -> Math.round(a.tan() * RAKE)).orElse((long) USUAL);
    boolean inches = job.units() == Units.INCH;
    return dial("rake", base, 1, 3 * base, v -> inches ? inches(v) + " in 4" : v + ":" + RAKE);
  }

  private Dial dial(String key, long base, long least, long most, LongFunction<String> text) {
    String path = opening.path() + ".head." + key;
    return new Dial(
        path,
        base,
        0,
        Math.max(base - least, most - base),
        base,
        v ->
            v < least || v > most
                ? null
                : List.of(new Change(path, text.apply(v), "strikes the joints from another depth")),
        h -> "");
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
}
