package headcourse.job.yaml;

import headcourse.job.HeadSpec;
import headcourse.units.Length;

/**
 * Reads {@code key:}. Without it a soldier head has a key of 8 in at the bottom and 10 at the top
 * (200 and 250 mm); where one width is given, the other differs by the same 2 in (50 mm). In every
 * other shape a width that is not given follows from the joints.
 */
final class KeyReader {
  private KeyReader() {}

  static HeadSpec.Key read(Section head, String shape) {
    Reading in = head.in;
    boolean soldier = shape.equals("soldier");
    Length bottom = soldier ? in.grid.snap(in.or(8, 200)) : null;
    Length taper = in.grid.snap(in.or(2, 50));
    Item item = head.item("key");
    if (item == null) {
      return new HeadSpec.Key(
          bottom, soldier ? bottom.plus(taper) : null, Length.ZERO, Length.ZERO, Length.ZERO);
    }
    if (!item.isMap() && !item.isList()) {
      String word = item.raw("none");
      if (!"none".equals(word)) {
        item.error(
            Reading.quoted(word) + " is no key; expected none, or widths as {bottom: 8, top: 10}");
      }
      return null;
    }
    Section s = item.section();
    Length low = s.length("bottom", Range.POSITIVE.cut(), null);
    Length high = s.length("top", Range.POSITIVE.cut(), null);
    if (soldier && low == null) {
      low = high == null ? bottom : high.minus(taper);
      if (!low.isPositive()) {
        low = high;
      }
    }
    if (soldier && high == null) {
      high = low.plus(taper);
    }
    HeadSpec.Key key =
        new HeadSpec.Key(
            low,
            high,
            s.length("rise", Range.NOT_NEGATIVE.cut(), Length.ZERO),
            s.length("drop", Range.NOT_NEGATIVE.cut(), Length.ZERO),
            s.length("proud", Range.NOT_NEGATIVE.cut(), Length.ZERO));
    s.done();
    return key;
  }
}
