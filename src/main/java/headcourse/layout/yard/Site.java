package headcourse.layout.yard;

import headcourse.layout.fitted.FittedHead;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.SideCase;
import headcourse.units.Length;

/**
 * A head with its key and striking point settled, ready for its stones.
 *
 * @param made the head with the stones that are cut
 * @param left what is left of its left side
 * @param right what is left of its right side
 * @param key length of its key along the blank where that comes from the pile, else −1, ticks
 * @param other whether that is not the key planned
 */
record Site(FittedHead made, FittedHead.Left left, FittedHead.Left right, long key, boolean other) {
  FittedHead.Left on(int s) {
    return s == 0 ? left : right;
  }

  /** The same with its key to be ordered. */
  Site ordered() {
    return new Site(made, left, right, -1, other);
  }

  double striking() {
    return left.all().striking();
  }

  /**
   * How much higher than the head a blank must be where the stones lie aslant on it, under a
   * cambered soffit.
   */
  Length moreHeight() {
    FlatHead head = made.head();
    Length more = Length.ZERO;
    for (int s = 0; s < 2 && head.fanned(); s++) {
      SideCase rest = on(s).rest();
      if (rest != null) {
        more = more.max(head.moreHeight(rest.ends().get(rest.ends().size() - 1)));
      }
    }
    return more;
  }
}
