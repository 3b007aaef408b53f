package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.job.Opening;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.side.End;
import headcourse.layout.side.FlatHead;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A head with its key and striking point settled, ready for its stones.
 *
 * @param made the head with the stones that are cut
 * @param left what is left of its left side
 * @param right what is left of its right side
 * @param key length of its key along the blank where that comes from the pile, else −1, ticks
 */
record Site(FittedHead made, FittedHead.Left left, FittedHead.Left right, long key) {
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
    return new Site(made, left, right, -1);
  }

  /** The same, one side of it ending at some of its ends only; null where it can't. */
  Site ending(int s, List<End> ends) {
    FittedHead.Left one = on(s).ending(ends);
    return one == null ? null : new Site(made, s == 0 ? one : left, s == 0 ? right : one, key);
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
    return Stream.of(left, right)
        .filter(l -> head.fanned() && l.rest() != null)
        .map(l -> head.moreHeight(l.rest().ends().get(l.rest().ends().size() - 1)))
        .reduce(Length.ZERO, Length::max);
  }
}
