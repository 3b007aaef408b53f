package headcourse.guards;

import java.util.List;

/**
 * A stone as {@code layout.json} has it. Millimetres from the centre line and the soffit line, y
 * up; of a stone with four corners these run from the lower left against the clock.
 */
record Stone(Json json, String opening) {
  String mark() {
    return json.text("mark");
  }

  /** The mark without the opening's. */
  String own() {
    return mark().substring(opening.length() + 1);
  }

  String side() {
    return json.text("side");
  }

  double[] corner(int i) {
    return corners().get(i);
  }

  List<double[]> corners() {
    return json.list("outlineMm").stream()
        .map(p -> p.list().stream().mapToDouble(Json::number).toArray())
        .toList();
  }

  /** Whether it has four corners and a level soffit, so that they can be told apart. */
  boolean plain() {
    List<double[]> c = corners();
    return c.size() == 4 && Math.abs(c.get(0)[1] - c.get(1)[1]) < 1e-3;
  }

  double distance(int i, int j) {
    return Math.hypot(corner(i)[0] - corner(j)[0], corner(i)[1] - corner(j)[1]);
  }

  /**
   * Where its left or right edge meets a level, drawn on where it ends before: distance to the
   * right.
   */
  double foot(boolean left, double level) {
    double[] a = corner(left ? 0 : 1);
    double[] b = corner(left ? 3 : 2);
    return a[0] + (b[0] - a[0]) * (level - a[1]) / (b[1] - a[1]);
  }

  /** Whether an edge of a name is the left one; {@code null} where it is neither. */
  Boolean left(String edge) {
    return switch (edge) {
      case "left" -> true;
      case "right" -> false;
      case "outer" -> side().equals("left");
      case "inner" -> side().equals("right");
      default -> null;
    };
  }
}
