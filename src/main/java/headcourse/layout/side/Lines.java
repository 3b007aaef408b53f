package headcourse.layout.side;

/**
 * The joint lines that one side may use. A joint is named by its foot on the dividing line: the
 * line that widths are counted on. All feet are ticks, and are those of the edge towards the centre
 * line; the joint line itself stands half a joint farther out.
 */
public interface Lines {
  /** Foot of the key's joint on the dividing line. */
  long start();

  /** Foot of the key's joint on the soffit line. */
  long startSoffit();

  /** Foot of the key's joint on the top line. */
  long startTop();

  /** Where the line before the first stone really crosses the soffit line, ticks. */
  default double trueSoffit() {
    return startSoffit();
  }

  /** Where it really crosses the top line, ticks. */
  default double trueTop() {
    return startTop();
  }

  /** Where it crosses the dividing line, ticks. */
  default double trueStart() {
    return start();
  }

  /** Whether the dividing line is the top line. */
  default boolean onTop() {
    return false;
  }

  /** How many stones of the side are there already, before the first. */
  default int there() {
    return 0;
  }

  /** Of how many of these, and the key, the width was measured. */
  default int measured() {
    return 0;
  }

  /** Width of the stone before the first, ticks; NaN where it is the key. */
  default double previous() {
    return Double.NaN;
  }

  /** Where joint {@code index} (from 1 outwards) meets the soffit line. */
  long soffit(int index, long foot);

  /** Where joint {@code index} meets the top line. */
  long top(int index, long foot);

  /** The place on the dividing line of what lies at a place on the soffit line, ticks. */
  double dividing(double soffit);

  /** From this joint on, all of them follow one rule whatever their number. */
  int regularFrom();

  /** Depth of the striking point below the soffit line in mm; infinite for upright stones. */
  double striking();
}
