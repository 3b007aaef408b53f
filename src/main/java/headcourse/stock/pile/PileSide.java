package headcourse.stock.pile;

/**
 * What one side of a head allows, whatever its shape: feet are ticks from the centre line, those of
 * the edge of a joint towards the centre.
 */
public interface PileSide {
  /** Foot of the key's joint. */
  long start();

  /** Width of a joint. */
  long joint();

  /** The least foot where it may end. */
  long firstEnd();

  /** The greatest foot where it may end; less than the least where it may end nowhere. */
  long lastEnd();

  /** How far the bearing of an end is from its target, pm; negative where it may not end there. */
  long bearingOff(long foot);

  /** Whether joint {@code index}, from 1 outwards, may stand at a foot. */
  boolean jointStands(int index, long foot);

  /** Whether stone {@code index} may reach from a joint to a joint. */
  boolean stoneFits(int index, long inner, long outer);

  /** Whether stone {@code index} may reach from a joint to the end. */
  boolean endFits(int index, long inner, long end);

  /**
   * How much longer stone {@code index} is along the blank than it is wide, where only its place in
   * the row decides that.
   */
  long extra(int index);

  /**
   * How long stone {@code index} is along the blank, from a joint to a joint or to the end: never
   * less than it is wide, and longer in a fan the farther out it stands.
   */
  default long extent(int index, long inner, long outer, boolean end) {
    return outer - inner - joint() + extra(index);
  }

  /** Whether stone {@code index} may reach from a joint to the next, or as the last to the end. */
  default boolean stands(int index, long inner, long outer, boolean last) {
    return last
        ? bearingOff(outer) >= 0 && endFits(index, inner, outer)
        : jointStands(index, outer) && stoneFits(index, inner, outer);
  }

  /** Whether how long a stone is depends on where it stands. */
  default boolean fanned() {
    return false;
  }

  /** From this stone on, all of them follow one rule whatever their number. */
  default int regularFrom() {
    return 2;
  }

  /**
   * Whether the joints of both sides may stand at the same places from {@link #regularFrom} on,
   * wherever they begin and may end.
   */
  default boolean sameJoints(PileSide other) {
    return equals(other);
  }

  /** Whether both sides may end at the same places. */
  default boolean sameEnds(PileSide other) {
    return equals(other);
  }
}
