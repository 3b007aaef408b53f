package headcourse.layout.side;

import headcourse.job.Fitted;
import java.util.List;

/**
 * The stones next to the key that are there already, with the joint lines that follow from them.
 *
 * @param key the key, or null where it was not measured
 * @param stones from the key outwards
 * @param soffits feet of joints 0 … n on the soffit line, pm
 * @param tops feet of the same on the top line, pm
 */
public record CutStones(Stone key, List<Stone> stones, long[] soffits, long[] tops) {
  /**
   * A stone that is there.
   *
   * @param measured what was measured of it, or null for one that is taken as drawn
   * @param drawn whether it is just as drawn, and where it was
   * @param height where its upper edge is above the soffit line, mm; 0 where it is as drawn
   */
  public record Stone(Fitted measured, boolean drawn, double height) {}

  /** How many stones, without the key. */
  public int count() {
    return stones.size();
  }

  /** Of how many of them, and the key, the width is known. */
  public int measured() {
    int known = key == null ? 0 : 1;
    return known + (int) stones.stream().filter(s -> s.measured() != null).count();
  }

  /** Foot of a joint on the soffit line, pm. */
  public long soffit(int index) {
    return soffits[index];
  }

  /** Foot of a joint on the top line, pm. */
  public long top(int index) {
    return tops[index];
  }

  /** The stone with an index, from 1. */
  Stone stone(int index) {
    return stones.get(index - 1);
  }

  /** Whether all of them, and the key, are as drawn. */
  public boolean asDrawn() {
    return (key == null || key.drawn) && stones.stream().allMatch(Stone::drawn);
  }

  /** Whether the joint lines are the same as another's. */
  public boolean alike(CutStones o) {
    return java.util.Arrays.equals(soffits, o.soffits) && java.util.Arrays.equals(tops, o.tops);
  }
}
