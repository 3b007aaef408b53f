package headcourse.layout.curved;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import java.util.List;

/**
 * The joints of one half.
 *
 * @param intrados the soffit
 * @param joint width of a joint
 * @param lines joint lines outwards, the skewback last; the first is the key's, or the centre line
 * @param key whether there is a key
 */
record Division(Intrados intrados, double joint, List<CutLine> lines, boolean key) {
  /** Copies the lines. */
  Division {
    lines = List.copyOf(lines);
  }

  /** Stones on one side, besides the key. */
  int each() {
    return lines.size() - 1;
  }

  /** The inner edge of a stone; of the key's half, the centre line. */
  CutLine inner(int stone) {
    return stone == 0 ? CutLine.CENTRE : lines.get(stone - 1).moved(joint / 2);
  }

  /** The outer edge of a stone. */
  CutLine outer(int stone) {
    return lines.get(stone).moved(-joint / 2);
  }

  /** The soffit of a stone on the right side, left to right. */
  List<Edge> soffit(int stone) {
    return intrados.between(
        intrados.crossing(inner(stone), 0, 0), intrados.crossing(outer(stone), 0, 0));
  }

  /** The straight width of each stone along the soffit, from the key outwards, key left out. */
  double[] chords() {
    double[] chords = new double[each()];
    for (int i = 1; i <= each(); i++) {
      Point a = intrados.at(intrados.crossing(inner(i), 0, 0));
      Point b = intrados.at(intrados.crossing(outer(i), 0, 0));
      // A joint wider than the stone turns it inside out.
      double ahead = intrados.tangent(lines.get(i).s()).dot(b.minus(a));
      chords[i - 1] = ahead > 0 ? a.distance(b) : -a.distance(b);
    }
    return chords;
  }

  /** The straight width of the key along the soffit. */
  double keyChord() {
    return 2 * intrados.at(intrados.crossing(outer(0), 0, 0)).x();
  }

  /** How far the last joint before the skewback stands from the jamb's corner. */
  double clear() {
    return lines.get(each() - 1).foot().distance(lines.get(each()).foot());
  }
}
