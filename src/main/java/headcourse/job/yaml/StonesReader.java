package headcourse.job.yaml;

import headcourse.job.HeadSpec;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code stones:}, the ordinary stones of a head. */
final class StonesReader {
  /** No side has more stones. */
  private static final int MOST = 500;

  /**
   * From 3/4 in: nothing narrower is cut, held and screwed, and no sheet has room for its mark.
   * Common practice, no source.
   */
  static final Range WIDTH = Range.of(0.75, 1200);

  /** So many stones alike: {@code 6 x 7 1/16}. */
  private static final Pattern SEVERAL = Pattern.compile("([0-9]{1,3})\\s*[x×]\\s*(.+)");

  private StonesReader() {}

  static HeadSpec.Stones read(Section s, String mark) {
    Reading in = s.in;
    Length min = s.length("min", WIDTH, null);
    Length max = s.length("max", WIDTH, null);
    Length target = s.length("target", WIDTH, null);
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
    if (rhythm.equals("mixed")
        && jump != null
        && jump.compareTo(step) < 0
        && in.sound(s.at("jump"))) {
      in.error(
          s.at("jump"),
          "neighbours would differ by no more than this and by no less than step, "
              + in.say(step)
              + "; expected at least that");
    }
    Long each = s.get("each-side", null, i -> i.whole(1, 500));
    boolean mirror = s.flag("mirror", true);
    long seed = s.whole("seed", 0, Long.MAX_VALUE / 10, seed(mark));
    List<String> leads =
        Arrays.stream(HeadSpec.Prefer.values()).map(HeadSpec.Prefer::word).toList();
    String prefer = s.word("prefer", leads, "target");
    Length give = s.length("give", Range.NOT_NEGATIVE, in.or(0.5, 12));
    HeadSpec.Widths widths = s.get("widths", null, StonesReader::widths);
    int given = widths == null || each == null ? 0 : widths.left().size();
    if (given > 0 && in.sound(s.at("each-side")) && given != each) {
      in.error(
          s.at("widths"), "widths of " + given + " stones; expected " + each + ", as each-side");
    }
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
        HeadSpec.Prefer.valueOf(prefer.toUpperCase(Locale.ROOT)),
        give,
        widths);
  }

  /** {@code [6 x 7 1/16, 6 1/2]} for both sides, or {@code {left: [...], right: [...]}}. */
  private static HeadSpec.Widths widths(Item item) {
    if (!item.isMap()) {
      List<Length> both = side(item);
      return both.isEmpty() ? null : new HeadSpec.Widths(both, both);
    }
    Section s = item.section();
    List<Length> left = s.get("left", List.of(), StonesReader::side);
    List<Length> right = s.get("right", List.of(), StonesReader::side);
    s.done();
    if (item.in().sound(s.at("left"), s.at("right")) && (left.isEmpty() || right.isEmpty())) {
      item.error("widths of one side alone; expected both, as {left: [7, 6 1/2], right: [7]}");
    }
    return left.isEmpty() || right.isEmpty() ? null : new HeadSpec.Widths(left, right);
  }

  private static List<Length> side(Item item) {
    List<Length> widths = new ArrayList<>();
    for (Item i : item.list()) {
      String raw = i.raw("a width");
      Matcher several = raw == null ? null : SEVERAL.matcher(raw);
      if (several == null) {
        continue;
      }
      int times = several.matches() ? Integer.parseInt(several.group(1)) : 1;
      String text = several.matches() ? several.group(2) : raw;
      Length width = Lengths.read(text, Range.POSITIVE.cut(), item.in(), i::error);
      if (times < 1 || widths.size() + times > MOST) {
        i.error(Reading.quoted(raw) + " will not do; expected 1 to " + MOST + " stones a side");
      } else if (width != null) {
        widths.addAll(Collections.nCopies(times, width));
      }
    }
    return widths;
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
