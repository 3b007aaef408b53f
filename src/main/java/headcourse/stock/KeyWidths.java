package headcourse.stock;

import headcourse.job.HeadSpec;
import headcourse.job.Opening;
import headcourse.units.Length;

/** An opening whose key has got its width. */
final class KeyWidths {
  private KeyWidths() {}

  /** The opening with a key of such widths; null where one is left to the other. */
  static Opening of(Opening o, Length bottom, Length top) {
    HeadSpec h = o.head();
    HeadSpec.Key k = new HeadSpec.Key(bottom, top, h.key().rise(), h.key().drop(), h.key().proud());
    return o.with(h.with(k));
  }
}
