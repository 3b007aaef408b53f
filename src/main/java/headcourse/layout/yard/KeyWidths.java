package headcourse.layout.yard;

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
    return new Opening(
        o.path(),
        o.mark(),
        o.label(),
        o.count(),
        o.width(),
        o.height(),
        o.reveal(),
        o.wallLeft(),
        o.wallRight(),
        o.measured(),
        new HeadSpec(
            h.shape(),
            h.height(),
            k,
            h.stones(),
            h.bearing(),
            h.clear(),
            h.soffit(),
            h.seat(),
            h.params()));
  }
}
