package headcourse.job.yaml;

import headcourse.job.HeadSpec;
import headcourse.units.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Reads {@code stones:}, the ordinary stones of a head. */
final class StonesReader {
  private StonesReader() {}

  static HeadSpec.Stones read(Section s, String mark) {
    Reading in = s.in;
    Length min = s.length("min", Range.POSITIVE, null);
    Length max = s.length("max", Range.POSITIVE, null);
    Length target = s.length("target", Range.POSITIVE, null);
    // A default gives way to what the job says of the others.
    Length aim = target != null ? target : HeadReader.between(in.or(7, 180), min, max);
    min = min != null ? min : in.or(4.5, 115).min(aim);
    max = max != null ? max : in.or(9, 230).max(aim);
    HeadReader.order(in, s.path, min, aim, max);
    List<String> words =
        Arrays.stream(HeadSpec.Rhythm.values()).map(HeadSpec.Rhythm::word).toList();
    String rhythm = s.word("rhythm", words, "even");
    boolean graded = rhythm.equals("graded");
    Length step = s.length("step", graded ? Range.SIGNED : Range.NOT_NEGATIVE, in.or(0.5, 12));
    Length jump = s.length("jump", Range.NOT_NEGATIVE, null);
    Long each = s.get("each-side", null, i -> i.whole(1, 500));
    boolean mirror = s.flag("mirror", true);
    long seed = s.whole("seed", 0, Long.MAX_VALUE / 10, seed(mark));
    List<String> leads =
        Arrays.stream(HeadSpec.Prefer.values()).map(HeadSpec.Prefer::word).toList();
    String prefer = s.word("prefer", leads, "target");
    s.done();
    return new HeadSpec.Stones(
        min,
        max,
        aim,
        step,
        jump,
        each == null ? null : each.intValue(),
        HeadSpec.Rhythm.valueOf(rhythm.toUpperCase(Locale.ROOT).replace('-', '_')),
        mirror,
        seed,
        HeadSpec.Prefer.valueOf(prefer.toUpperCase(Locale.ROOT)));
  }

  /** FNV-1a of the mark: the same mark gives the same head on every machine. */
  static long seed(String mark) {
    long h = 0xcbf29ce484222325L;
    for (char c : mark.toCharArray()) {
      h = (h ^ c) * 0x100000001b3L;
    }
    return h >>> 1;
  }
}
