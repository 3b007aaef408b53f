package headcourse.layout.curved;

import headcourse.job.HeadSpec;
import headcourse.layout.Change;
import headcourse.testing.JobMaker;
import headcourse.units.Length;

/** Writes a change into a job for tests, as a mason would into the file. */
final class Changed {
  private Changed() {}

  static void apply(JobMaker m, Change c) {
    JobMaker.OpeningMaker o = m.first();
    String key = c.path().substring("openings[0].head.".length());
    switch (key) {
      case "stones.min" -> o.min = length(c.value());
      case "stones.max" -> o.max = length(c.value());
      case "stones.each-side" -> o.eachSide = Integer.valueOf(c.value());
      case "stones.rhythm" -> o.rhythm = HeadSpec.Rhythm.valueOf(c.value().toUpperCase());
      case "clear" -> o.clear = length(c.value());
      case "height" -> o.headHeight = length(c.value());
      case "shape" -> o.shape = c.value();
      case "key.bottom" -> o.key = key(o.key, length(c.value()), null, o.key.drop());
      case "key.top" -> o.key = key(o.key, o.key.bottom(), length(c.value()), o.key.drop());
      case "key.drop" -> o.key = key(o.key, o.key.bottom(), o.key.top(), length(c.value()));
      case "extrados", "point" -> o.params.put(key, c.value());
      default ->
          o.params.put(
              key,
              o.params.get(key) instanceof Double
                  ? (Object) Double.valueOf(c.value())
                  : length(c.value()));
    }
  }

  private static HeadSpec.Key key(HeadSpec.Key k, Length bottom, Length top, Length drop) {
    return new HeadSpec.Key(bottom, top, k.rise(), drop, k.proud());
  }

  /** Inches with a fraction, as in {@code 7 15/16}. */
  private static Length length(String text) {
    double sum = 0;
    for (String part : text.split(" ")) {
      String[] f = part.split("/");
      sum +=
          f.length == 2
              ? Double.parseDouble(f[0]) / Double.parseDouble(f[1])
              : Double.parseDouble(part);
    }
    return Length.inches(sum);
  }
}
