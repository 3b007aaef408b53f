package headcourse.job.yaml;

import headcourse.job.HeadSpec;
import headcourse.units.Length;

/**
 * Reads {@code key:}. A soldier's has both widths, given or not; in every other shape a width that
 * is not given follows from the joints.
 */
final class KeyReader {
  private KeyReader() {}

  static HeadSpec.Key read(Section head, String shape) {
    Reading in = head.in;
    boolean soldier = shape.equals("soldier");
    Item item = head.item("key");
    if (item == null) {
      Length none = Length.ZERO;
      HeadSpec.Key key = new HeadSpec.Key(null, null, none, none, none);
      return soldier ? key.upright(in.units, in.grid) : key;
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
    HeadSpec.Key key =
        new HeadSpec.Key(
            s.length("bottom", StonesReader.WIDTH.cut(), null),
            s.length("top", StonesReader.WIDTH.cut(), null),
            s.length("rise", Range.of(0, 120).cut(), Length.ZERO),
            s.length("drop", Range.of(0, 120).cut(), Length.ZERO),
            s.length("proud", Range.of(0, 120).cut(), Length.ZERO));
    s.done();
    return soldier ? key.upright(in.units, in.grid) : key;
  }
}
