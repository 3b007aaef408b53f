package headcourse.sheet.elevation;

import headcourse.geom.Box;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import java.util.ArrayList;
import java.util.List;

/** Neighbouring stones that are shown together where a whole head would be too small to read. */
public final class HeadPart {
  private final int number;
  private final int of;
  private final List<PlacedStone> stones;
  private final Box box;

  /**
   * A part of a head.
   *
   * @param number from 1, left to right
   * @param of how many parts the head is shown in
   * @param stones left to right; parts share the stone where they meet
   */
  public HeadPart(int number, int of, List<PlacedStone> stones) {
    this.number = number;
    this.of = of;
    this.stones = List.copyOf(stones);
    this.box = HeadFigures.around(stones);
  }

  /** Its number, from 1, left to right. */
  public int number() {
    return number;
  }

  /** In how many parts the head is shown. */
  public int of() {
    return of;
  }

  /** The stones, left to right; parts share the stone where they meet. */
  public List<PlacedStone> stones() {
    return stones;
  }

  /** The least box around them, model space. */
  public Box box() {
    return box;
  }

  /** Whether this is the whole head. */
  public boolean whole() {
    return of == 1;
  }

  /** Whether a mark belongs to one of the stones. */
  boolean holds(RunMark mark) {
    return holds(mark.inner(), mark.outer());
  }

  /** Whether one of the stones beside a joint belongs to it. */
  boolean holds(JointLine joint) {
    return holds(joint.inner(), joint.outer());
  }

  private boolean holds(String inner, String outer) {
    for (PlacedStone s : stones) {
      if (s.mark().equals(inner) || s.mark().equals(outer)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a distance from the centre line lies within the part, ends included. */
  boolean holds(double x) {
    return x >= box.minX() - 0.02 && x <= box.maxX() + 0.02;
  }

  /** An arch in so many parts of about as many stones. */
  static List<HeadPart> splitArch(List<PlacedStone> stones, int parts) {
    List<HeadPart> list = new ArrayList<>();
    for (int p = 0; p < parts; p++) {
      int from = stones.size() * p / parts;
      // The stone where two parts meet is shown on both.
      int to = Math.min(stones.size(), stones.size() * (p + 1) / parts + (p + 1 < parts ? 1 : 0));
      list.add(new HeadPart(p + 1, parts, stones.subList(from, to)));
    }
    return list;
  }

  /** Whether a side's jamb is shown: an arch stands on it with its end stone. */
  boolean holdsJamb(HeadFigures figures, Side side) {
    return figures.curved() ? holdsEnd(figures, side) : holds(side.sign() * figures.jamb(side));
  }

  /** Whether the last stone of a side is shown. */
  boolean holdsEnd(HeadFigures figures, Side side) {
    return stones.contains(figures.layout().end(side));
  }

  /** A head in so many parts of about equal width. */
  public static List<HeadPart> split(List<PlacedStone> stones, int parts) {
    if (parts <= 1) {
      return List.of(new HeadPart(1, 1, stones));
    }
    Box all = HeadFigures.around(stones);
    List<HeadPart> list = new ArrayList<>();
    int from = 0;
    for (int p = 1; p <= parts; p++) {
      double until = all.minX() + all.width() * p / parts;
      int to = p == parts ? stones.size() : from + 1;
      while (to < stones.size() && stones.get(to).outline().bounds().centre().x() < until) {
        to++;
      }
      // The stone where two parts meet is shown on both.
      int last = Math.min(stones.size(), to + (p < parts ? 1 : 0));
      list.add(new HeadPart(p, parts, stones.subList(from, last)));
      from = Math.min(stones.size() - 1, to);
    }
    return list;
  }
}
