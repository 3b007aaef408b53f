package headcourse.layout.yard.rows;

/**
 * What one side of a head allows, whatever its shape. Feet are ticks from the centre line, those of
 * the edge of a joint towards the centre; stones are counted from 1 outwards.
 */
public interface RowSide {
  /** Foot of the joint before the first stone. */
  long start();

  /** Width of a joint. */
  long joint();

  /** The greatest foot where it may end; less than its start where it may end nowhere. */
  long lastEnd();

  /** How far the bearing of an end is from its target, pm; negative where it may not end there. */
  long bearingOff(long foot);

  /**
   * Whether stone {@code index} may reach from a joint to the next, or as the last to the end.
   *
   * @param last whether it is the last
   */
  boolean stands(int index, long inner, long outer, boolean last);

  /**
   * How long stone {@code index} is along its blank; never less for a wider one from the same
   * joint.
   */
  long extent(int index, long inner, long outer, boolean last);

  /**
   * By how much the joint or the end at a foot may fail to land, pm: what it lacks of the drift
   * that the worst case brings; 0 where it lands in any case.
   */
  default long shortfall(int index, long foot, boolean last) {
    return 0;
  }

  /** Whether how long a stone is depends on where it stands. */
  boolean fanned();

  /** From this stone on, all of them follow one rule whatever their number. */
  int regularFrom();

  /** What two sides have equal where that rule is the same for both. */
  default Object rule() {
    return this;
  }
}
