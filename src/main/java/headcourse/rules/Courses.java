package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** The wall's coursing beside a head. */
final class Courses {
  private Courses() {}

  /** Top of the end stones above the soffit line; empty for a head without stones. */
  static Optional<Length> top(HeadWork head) {
    Length top = null;
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      Optional<Piece> end = Ends.of(head, side);
      if (end.isPresent()) {
        Length y = Length.mm(end.get().stone().outline().bounds().maxY());
        top = top == null ? y : top.max(y);
      }
    }
    return Optional.ofNullable(top);
  }

  /** Height of the course that lies on a level; of the last one below where none does. */
  static Optional<Length> heightAt(List<Length> courses, Length level) {
    for (int i = 0; i + 1 < courses.size(); i++) {
      boolean last = i + 2 == courses.size();
      if (courses.get(i + 1).compareTo(level) > 0 || last) {
        return Optional.of(courses.get(i + 1).minus(courses.get(i)));
      }
    }
    return Optional.empty();
  }
}
