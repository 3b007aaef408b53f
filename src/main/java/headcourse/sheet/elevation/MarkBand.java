package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.LabelSpacing;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import java.util.List;
import java.util.Optional;

/**
 * A band of running marks: numbers turned to read from the right, in one row or in two that take
 * turns, each tied to its place by a leader. Numbers keep their order and never cross a wall line.
 */
final class MarkBand {
  /** Air between numbers side by side, mm. */
  private static final double AIR = 0.8;

  private static final double GAP = 1.2;

  /** Where a leader that steps aside begins on its way from the foot, of that way. */
  private static final double HOOK = 0.3;

  private static final String ZERO = "0";

  // Ink of a number with a fraction, above and below its base line, over its height of capitals.
  private static final String TALLEST = "⁰⁄₀\"";

  /**
   * One number.
   *
   * @param foot the place it belongs to, on paper
   * @param exit x at which its leader leaves the head
   * @param text what it says
   * @param aside whether its leader gets there at once, clear of a back that rises steeply
   */
  record Item(Point foot, double exit, String text, boolean aside) {
    Item(Point foot, double exit, String text) {
      this(foot, exit, text, false);
    }
  }

  /**
   * A line that no number may cross.
   *
   * @param x where, on paper
   * @param left whether what stands right on it belongs to its left
   * @param nought whether it is the centre line, on which a nought stands
   */
  record Wall(double x, boolean left, boolean nought) {
    double margin(double cap) {
      return nought ? LabelShape.width(ZERO, new Lettering(cap, true)) / 2 : 0;
    }
  }

  /**
   * How the numbers are set.
   *
   * @param cap height of capitals
   * @param rows one or two
   * @param slots where each number stands
   * @param jog depth of the zone in which leaders bend
   * @param near depth of the row next to the head
   * @param depth depth of the whole band
   */
  record Plan(double cap, int rows, double[] slots, double jog, double near, double depth) {}

  private final List<Item> items;
  private final List<Wall> walls;
  private final double low;
  private final double high;
  private final int right;

  /**
   * A band.
   *
   * @param items left to right
   * @param walls lines, left to right, that no number may cross
   * @param low left end of the room
   * @param high right end of the room
   */
  MarkBand(List<Item> items, List<Wall> walls, double low, double high) {
    this.items = List.copyOf(items);
    this.walls = List.copyOf(walls);
    this.low = low;
    this.high = high;
    this.right = rightOfCentre();
  }

  /** Whether there is any number. */
  boolean any() {
    return !items.isEmpty();
  }

  /** The band somewhere else on paper; only moves keep its plan. */
  MarkBand moved(Similarity shift) {
    double dx = shift.dx();
    List<Item> there =
        items.stream()
            .map(i -> new Item(shift.apply(i.foot), i.exit + dx, i.text, i.aside))
            .toList();
    List<Wall> lines = walls.stream().map(w -> new Wall(w.x + dx, w.left, w.nought)).toList();
    return new MarkBand(there, lines, low + dx, high + dx);
  }

  /** Across the reading direction, how much paper a number takes. */
  private static double thickness(double cap) {
    Lettering l = new Lettering(cap, true);
    return LabelShape.above(TALLEST, l) + LabelShape.below(TALLEST, l);
  }

  /** How the numbers are set at a height and in so many rows, if there is room side by side. */
  Optional<Plan> plan(double cap, int rows) {
    double t = thickness(cap);
    double pitch = rows == 1 ? t + AIR : t / 2 + AIR + 0.15;
    double half = t / 2 + AIR;
    double[] slots = new double[items.size()];
    double most = 0;
    int done = 0;
    for (int w = 0; w <= walls.size(); w++) {
      double lo = w == 0 ? low : walls.get(w - 1).x + walls.get(w - 1).margin(cap);
      double hi = w == walls.size() ? high : walls.get(w).x - walls.get(w).margin(cap);
      int n = count(done, w);
      if (n > 0 && (n - 1) * pitch + 2 * half > hi - lo) {
        return Optional.empty();
      }
      double[] wanted = new double[n];
      for (int i = 0; i < n; i++) {
        wanted[i] = items.get(done + i).exit;
      }
      double[] placed = LabelSpacing.along(wanted, pitch, lo + half, hi - half);
      for (int i = 0; i < n; i++) {
        slots[done + i] = placed[i];
        most = Math.max(most, Math.abs(placed[i] - wanted[i]));
      }
      done += n;
    }
    double jog = most < 0.05 ? 1 : Math.max(3, Math.min(12, most * 0.7));
    double near = width(cap, rows, 0);
    double far = rows == 1 ? 0 : width(cap, rows, 1) + 2;
    return Optional.of(new Plan(cap, rows, slots, jog, near, jog + AIR + near + far));
  }

  // How many items from one on lie before wall w; what stands on an outer wall belongs outside.
  private int count(int from, int w) {
    int n = 0;
    while (from + n < items.size() && (w == walls.size() || before(items.get(from + n), w))) {
      n++;
    }
    return n;
  }

  private boolean before(Item item, int w) {
    Wall wall = walls.get(w);
    return item.foot.x() < wall.x + (wall.left ? 0.02 : -0.02);
  }

  // The first number to the right of the centre line.
  private int rightOfCentre() {
    double centre = -1e9;
    for (Wall w : walls) {
      centre = w.nought ? w.x : centre;
    }
    int i = 0;
    while (i < items.size() && items.get(i).foot.x() < centre) {
      i++;
    }
    return i;
  }

  // Rows take turns outwards from the centre line, so that both sides look alike.
  private int row(int i, int rows) {
    return rows == 1 ? 0 : (i >= right ? i - right : right - 1 - i) % 2;
  }

  private double width(double cap, int rows, int row) {
    Lettering lettering = new Lettering(cap, true);
    double most = 0;
    for (int i = 0; i < items.size(); i++) {
      if (row(i, rows) == row) {
        most = Math.max(most, LabelShape.width(items.get(i).text, lettering));
      }
    }
    return most;
  }

  /**
   * Draws the band.
   *
   * @param edge y at which it begins
   * @param way +1 below the head, −1 above it
   */
  void draw(Board board, Plan plan, double edge, int way) {
    Lettering lettering = new Lettering(plan.cap, true);
    double bend = edge + way * plan.jog;
    for (int i = 0; i < items.size(); i++) {
      Item item = items.get(i);
      double slot = plan.slots[i];
      double text = bend + way * AIR;
      if (row(i, plan.rows) == 1) {
        text += way * (plan.near + 2);
      }
      Point foot = item.foot;
      Point start = new Point(foot.x(), foot.y() + way * GAP);
      Point exit = new Point(item.exit, edge);
      if (item.aside) {
        double out = item.exit - foot.x();
        Point turn = new Point(item.exit, foot.y() + way * Math.abs(out));
        board.line(foot.towards(turn, HOOK), turn, Pen.FINE);
        start = turn;
      }
      // A foot may lie so near the numbers that its line would run into its own.
      if (way * (edge - start.y()) > 0) {
        board.line(start, exit, Pen.FINE);
      }
      board.line(exit, new Point(slot, bend), Pen.FINE);
      board.line(new Point(slot, bend), new Point(slot, text - way * AIR), Pen.FINE);
      write(board, item, slot, text, way, lettering);
    }
    for (Wall w : walls) {
      if (w.nought) {
        double above = LabelShape.above(ZERO, lettering);
        double base = bend + way * AIR + (way > 0 ? above : -LabelShape.below(ZERO, lettering));
        board.text(new Point(w.x, base), ZERO, lettering, Align.MIDDLE, 0);
      }
    }
  }

  private static void write(
      Board board, Item item, double slot, double text, int way, Lettering lettering) {
    double above = LabelShape.above(item.text, lettering);
    double below = LabelShape.below(item.text, lettering);
    Point at = new Point(slot + (above - below) / 2, text);
    board.text(at, item.text, lettering, way > 0 ? Align.END : Align.START, 90);
  }
}
