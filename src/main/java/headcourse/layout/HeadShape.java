package headcourse.layout;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.ShapeDef;
import headcourse.units.Length;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * A shape of head: what it asks for, and how it is set out. One file each, registered in {@code
 * headcourse.layout.shapes.Shapes}.
 */
public interface HeadShape {
  /** Its name and its own keys. */
  ShapeDef definition();

  /** Sets out the head over an opening whose {@code head.shape} is this one. */
  Solution setOut(Job job, Opening opening);

  /**
   * Every arrangement that keeps what the job asks: for each number of stones each width on the
   * grid, or where widths vary the best. Those whose mean widths are less than a step of the grid
   * apart count once. For a shape that knows no others, the one that is set out.
   */
  default List<Arrangement> arrangements(Job job, Opening opening) {
    return setOut(job, opening) instanceof Solution.Solved s
        ? List.of(made(job, s.head(), true))
        : List.of();
  }

  /**
   * A head that is set out, as an arrangement.
   *
   * @param byCount whether the number of its stones decides it
   */
  static Arrangement made(Job job, HeadLayout head, boolean byCount) {
    Length shortfall = head.proof().shortfall();
    return new Arrangement(
        widths(head, Side.LEFT),
        widths(head, Side.RIGHT),
        byCount,
        shortfall == null ? Length.ZERO : shortfall,
        key(head, f -> f.rightSoffit().minus(f.leftSoffit())),
        key(head, f -> f.rightTop().minus(f.leftTop())),
        Lap.of(head, job.setting().joint(), job.grid().tick()),
        () -> head);
  }

  private static Length key(HeadLayout head, Function<PlacedStone.Feet, Length> width) {
    return head.stones().stream()
        .filter(s -> s.role() == Role.KEY)
        .map(s -> width.apply(s.feet()))
        .findFirst()
        .orElse(Length.ZERO);
  }

  private static List<Length> widths(HeadLayout head, Side side) {
    return head.stones().stream()
        .filter(s -> s.side() == side && s.role() != Role.KEY)
        .sorted(Comparator.comparingInt(PlacedStone::index))
        .map(PlacedStone::bottom)
        .toList();
  }

  /** The same opening with so many stones a side. */
  static Opening withEachSide(Opening opening, int number) {
    HeadSpec head = opening.head();
    return opening.with(head.with(head.stones().withEachSide(number)));
  }

  /** Whether its soffit is straight or cambered, so that it is set out from the jambs as built. */
  default boolean flat() {
    return false;
  }
}
