package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The wall's coursing beside a head. */
final class Courses {
  private Courses() {}

  /** Top of the end stones above the soffit line; empty for a head without stones. */
  static Optional<Length> top(HeadWork head) {
    return Stream.of(Side.LEFT, Side.RIGHT)
        .flatMap(side -> Ends.of(head, side).stream())
        .map(p -> Length.mm(p.stone().outline().bounds().maxY()))
        .reduce(Length::max);
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
