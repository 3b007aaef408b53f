package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.job.Opening;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.SideCase;
import headcourse.units.Length;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

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

  Opening opening() {
    return made.head().terms().opening();
  }

  /** Full mark of a stone of a side. */
  String mark(int s, int index) {
    return opening().mark() + (s == 0 ? "-L" : "-R") + index;
  }

  /** Full mark of its key. */
  String keyMark() {
    return opening().mark() + "-K";
  }

  /** What was measured of a stone, by its full mark. */
  Optional<Fitted> measured(String mark) {
    return made.fitted().stream().filter(f -> f.mark().equals(mark)).findFirst();
  }

  /** Full marks of the stones that are there, those passed over too. */
  Set<String> cut() {
    Set<String> cut = new TreeSet<>(made.fitted().stream().map(Fitted::mark).toList());
    for (int s = 0; s < 2; s++) {
      for (int i = 1; i <= on(s).there(); i++) {
        cut.add(mark(s, i));
      }
    }
    return cut;
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
