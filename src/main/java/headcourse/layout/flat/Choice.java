package headcourse.layout.flat;

/**
 * One side as chosen.
 *
 * @param lines its joint lines
 * @param end its end
 * @param feet feet of joints 1 … n − 1 on the dividing line, inmost first
 */
public record Choice(Lines lines, End end, long[] feet) {
  /** How many stones. */
  public int count() {
    return feet.length + 1;
  }

  /** Foot of joint {@code index} (0 at the key, n at the end) on the soffit line. */
  long soffit(int index) {
    return index == 0
        ? lines.startSoffit()
        : index == count() ? end.soffit() : lines.soffit(index, feet[index - 1]);
  }

  /** Foot of joint {@code index} on the top line. */
  long top(int index) {
    return index == 0
        ? lines.startTop()
        : index == count() ? end.top() : lines.top(index, feet[index - 1]);
  }

  /** Foot of joint {@code index} on the dividing line. */
  long foot(int index) {
    return index == 0 ? lines.start() : index == count() ? end.foot() : feet[index - 1];
  }
}
