package headcourse.layout.yard;

import headcourse.job.HeadSpec;
import headcourse.job.Opening;
import headcourse.units.Length;

/** An opening whose key has got its width, or whose stones their number. */
final class KeyWidths {
  private KeyWidths() {}

  /** The opening with a key of such widths; null where one is left to the other. */
  static Opening of(Opening o, Length bottom, Length top) {
    HeadSpec h = o.head();
    return with(
        o,
        new HeadSpec.Key(bottom, top, h.key().rise(), h.key().drop(), h.key().proud()),
        h.stones());
  }

  /** The opening with so many stones a side, all alike. */
  static Opening divided(Opening o, int each) {
    HeadSpec.Stones s = o.head().stones();
    return with(
        o,
        o.head().key(),
        new HeadSpec.Stones(
            s.min(),
            s.max(),
            s.target(),
            s.step(),
            s.jump(),
            each,
            HeadSpec.Rhythm.EVEN,
            s.mirror(),
            s.seed(),
            s.prefer(),
            s.give(),
            null));
  }

  private static Opening with(Opening o, HeadSpec.Key key, HeadSpec.Stones stones) {
    return o.with(o.head().with(key).with(stones));
  }
}
