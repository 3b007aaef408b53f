package headcourse.layout.side;

/**
 * One side as chosen. Places that stones already cut decide may lie off the grid, so all of them
 * are given in picometres.
 *
 * @param lines its joint lines; with stones already cut, those of the rest
 * @param end its end; null where stones already cut make up the whole side
 * @param feet feet of the joints between the stones chosen, on the dividing line, inmost first
 * @param cut the stones that are there already
 */
public record Choice(Lines lines, End end, long[] feet, CutStones cut) {
  /** A side of which nothing is cut yet. */
  public Choice(Lines lines, End end, long[] feet) {
    this(lines, end, feet, null);
  }

  /** A side that stones already cut make up by themselves. */
  public static Choice whole(Lines lines, CutStones cut) {
    return new Choice(lines, null, new long[0], cut);
  }

  /** The same after stones that are there already. */
  public Choice after(CutStones stones) {
    return new Choice(lines, end, feet, stones);
  }

  /** How many stones. */
  public int count() {
    return before() + (end == null ? 0 : feet.length + 1);
  }

  /** How many of them are there already. */
  int before() {
    return cut == null ? 0 : cut.count();
  }

  /** Foot of joint {@code index} (0 at the key, n at the end) on the soffit line, pm. */
  public long soffit(int index, long tick) {
    if (cut != null && index <= cut.count()) {
      return cut.soffit(index);
    }
    int i = index - before();
    return tick
        * (i == 0
            ? lines.startSoffit()
            : index == count() ? end.soffit() : lines.soffit(i, feet[i - 1]));
  }

  /** Foot of joint {@code index} on the top line, pm. */
  public long top(int index, long tick) {
    if (cut != null && index <= cut.count()) {
      return cut.top(index);
    }
    int i = index - before();
    return tick
        * (i == 0 ? lines.startTop() : index == count() ? end.top() : lines.top(i, feet[i - 1]));
  }
}
