package headcourse.sheet.elevation;

import headcourse.geom.Box;
import headcourse.layout.PlacedStone;
import java.util.ArrayList;
import java.util.List;

/**
 * Neighbouring stones that are shown together where a whole head would be too small to read.
 *
 * @param number from 1, left to right
 * @param of how many parts the head is shown in
 * @param stones left to right; parts share the stone where they meet
 */
public record HeadPart(int number, int of, List<PlacedStone> stones) {
  /** Copies the stones. */
  public HeadPart {
    stones = List.copyOf(stones);
  }

  /** The least box around them, model space. */
  public Box box() {
    return HeadFigures.around(stones);
  }

  /** Whether this is the whole head. */
  public boolean whole() {
    return of == 1;
  }

  /** Whether a mark belongs to one of the stones. */
  boolean holds(RunMark mark) {
    return stones.stream()
        .anyMatch(s -> s.mark().equals(mark.inner()) || s.mark().equals(mark.outer()));
  }

  /** Whether a distance from the centre line lies within the part, ends included. */
  boolean holds(double x) {
    Box b = box();
    return x >= b.minX() - 0.02 && x <= b.maxX() + 0.02;
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
