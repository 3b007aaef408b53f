package headcourse.sheet.elevation;

import headcourse.drawing.Board;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Overlap;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Running marks around the soffit of an arch: at every joint how far it stands from the crown along
 * the form, written along the joint's own line inside the opening, in one row or in some that take
 * turns.
 */
final class ArcMarks {
  /** From the soffit to the number, mm. */
  private static final double OFF = 3;

  private static final double AIR = 0.45;
  private static final double BETWEEN_ROWS = 1.5;
  private static final int MOST_ROWS = 3;

  /** A direction this far beyond plumb is still read from the right, degrees. */
  private static final double OVERHANG = 12;

  private static final String ZERO = "0";

  /**
   * One mark.
   *
   * @param foot of its joint on the soffit, on paper
   * @param inward direction of the joint's line into the opening, on paper
   */
  private record Item(Point foot, Vec inward, String text) {}

  /**
   * How the marks are set.
   *
   * @param cap height of capitals, mm
   * @param marks leaders and numbers
   * @param box around the numbers
   */
  record Plan(double cap, List<Mark> marks, Box box) {}

  private final List<Item> items = new ArrayList<>();
  private final List<Path> faces = new ArrayList<>();

  /** What was found for each height; the same one is asked for again and again. */
  private final Map<Double, Optional<Plan>> plans = new HashMap<>();

  private final Item crown;
  private final double room;
  private final double middle;

  /** The first item on the right of the centre line. */
  private final int right;

  /**
   * The marks at the joints of a part.
   *
   * @param flat from model space to paper
   * @param room width of paper, mm
   */
  ArcMarks(HeadFigures figures, HeadPart part, Similarity flat, double room) {
    this.room = room;
    this.middle = flat.apply(Point.ORIGIN).x();
    for (PlacedStone s : part.stones()) {
      faces.add(s.outline().transformed(flat));
    }
    this.crown =
        part.holds(0) && figures.keyed()
            ? new Item(flat.apply(new Point(0, figures.crown())), new Vec(0, 1), ZERO)
            : null;
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      for (JointLine j : figures.joints(side)) {
        boolean again = side == Side.LEFT && j.index() == 0 && !figures.keyed();
        if (part.holds(j) && !again) {
          Vec inward = flat.apply(j.foot().minus(j.head())).unit();
          items.add(new Item(flat.apply(foot(j, part)), inward, figures.aroundForm(j)));
        }
      }
    }
    items.sort(Comparator.comparingDouble((Item i) -> i.foot.x()).thenComparing(i -> i.foot.y()));
    this.right = (int) items.stream().filter(item -> item.foot.x() < middle).count();
  }

  // The key's joint ends where the key does, which may hang below the soffit.
  private static Point foot(JointLine j, HeadPart part) {
    Vec inward = j.foot().minus(j.head()).unit();
    double most = 0;
    for (PlacedStone s : part.stones()) {
      if (s.role() == headcourse.layout.Role.KEY && j.index() == 0) {
        List<Edge> soffit = s.edges(FaceEdge.Where.SOFFIT);
        Point left = soffit.get(0).from();
        Point right = soffit.get(soffit.size() - 1).to();
        most = Math.max(most, (j.side() == Side.LEFT ? left : right).minus(j.foot()).dot(inward));
      }
    }
    return j.foot().plus(inward.times(most));
  }

  /** The marks as large as they go, at most so large; none where not even the least have room. */
  Optional<Plan> best(double most) {
    for (double cap : StoneLabels.HEIGHTS) {
      if (cap <= most + 1e-9) {
        Optional<Plan> plan = plans.computeIfAbsent(cap, this::plan);
        if (plan.isPresent()) {
          return plan;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Plan> plan(double cap) {
    for (int rows = 1; rows <= MOST_ROWS; rows++) {
      // Both sides alike; else one after the other.
      for (boolean alike : new boolean[] {true, false}) {
        Optional<Plan> plan = plan(cap, rows, alike);
        if (plan.isPresent()) {
          return plan;
        }
      }
    }
    return Optional.empty();
  }

  // From the centre line outwards, or from the left end on.
  private int row(int i, int rows, boolean alike) {
    return (alike ? i >= right ? i - right : right - 1 - i : i) % rows;
  }

  private double[] offs(Lettering lettering, int rows, boolean alike) {
    double[] offs = new double[rows];
    for (int i = 0; i < items.size(); i++) {
      int next = row(i, rows, alike) + 1;
      if (next < rows) {
        double wide = LabelShape.width(items.get(i).text, lettering);
        offs[next] = Math.max(offs[next], wide + BETWEEN_ROWS);
      }
    }
    offs[0] = OFF;
    for (int r = 1; r < rows; r++) {
      offs[r] += offs[r - 1];
    }
    return offs;
  }

  private Optional<Plan> plan(double cap, int rows, boolean alike) {
    Lettering lettering = new Lettering(cap, true);
    double[] offs = offs(lettering, rows, alike);
    List<Mark.Label> labels = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      double off = offs[row(i, rows, alike)];
      Item item = ownSide(items.get(i), off, lettering);
      labels.add(label(item, off, lettering));
      // Most tries fail here, and the ink of all faces is a long way round to the same answer.
      if (i >= rows && meet(labels.get(i - rows), labels.get(i))) {
        return Optional.empty();
      }
      Point from = item.foot.plus(item.inward.times(0.8));
      Point to = item.foot.plus(item.inward.times(off - 0.7));
      marks.add(new Mark.Stroke(Path.through(from, to), Pen.FINE));
    }
    Board board = new Board();
    faces.forEach(f -> board.stroke(f, Pen.CUT));
    marks.forEach(board::add);
    Box box = null;
    for (Mark.Label label : labels) {
      Box b = LabelShape.bounds(label);
      if (b.minX() < 0 || b.maxX() > room || !board.ink().free(LabelShape.corners(label), AIR)) {
        return Optional.empty();
      }
      board.add(label);
      marks.add(label);
      box = box == null ? b : box.union(b);
    }
    if (crown != null) {
      List<Mark.Label> noughts = new ArrayList<>();
      for (double off = OFF; off < 12 * cap; off += cap) {
        noughts.add(label(crown, off, lettering));
      }
      if (board.firstFree(noughts, AIR)) {
        Mark nought = board.marks().get(board.marks().size() - 1);
        marks.add(nought);
        Box b = LabelShape.bounds((Mark.Label) nought);
        box = box == null ? b : box.union(b);
      }
    }
    return Optional.of(new Plan(cap, marks, box == null ? new Box(0, 0, 0, 0) : box));
  }

  private static boolean meet(Mark.Label one, Mark.Label other) {
    return Overlap.depth(LabelShape.corners(one), LabelShape.corners(other)) > 0;
  }

  // Where the joint's line would take a number over the centre line it is turned down, as far as
  // that takes: the two sides of a pointed arch look at each other.
  private Item ownSide(Item item, double off, Lettering lettering) {
    double thick = LabelShape.above(item.text, lettering) + LabelShape.below(item.text, lettering);
    double beside = Math.max(0, Math.abs(item.foot.x() - middle) - thick / 2 - AIR);
    double most = beside / (off + LabelShape.width(item.text, lettering));
    double x = item.inward.x();
    if (x * (middle - item.foot.x()) <= 0 || Math.abs(x) <= most) {
      return item;
    }
    double turned = Math.signum(x) * most;
    return new Item(item.foot, new Vec(turned, Math.sqrt(1 - turned * turned)), item.text);
  }

  // Along the joint's line, read from below or from the right.
  private static Mark.Label label(Item item, double off, Lettering lettering) {
    double turn = Math.toDegrees(Math.atan2(-item.inward.y(), item.inward.x()));
    boolean back = turn > 90 + OVERHANG || turn <= -90 + OVERHANG;
    double degrees = back ? turn + (turn > 0 ? -180 : 180) : turn;
    double radians = Math.toRadians(degrees);
    double above = LabelShape.above(item.text, lettering);
    double below = LabelShape.below(item.text, lettering);
    Vec down = new Vec(Math.sin(radians), Math.cos(radians));
    Point at = item.foot.plus(item.inward.times(off)).plus(down.times((above - below) / 2));
    return new Mark.Label(at, item.text, lettering, back ? Align.END : Align.START, degrees);
  }

  /** Draws marks that were planned before the figure had its place. */
  static void draw(Board board, Plan plan, Similarity shift) {
    for (Mark m : plan.marks) {
      if (m instanceof Mark.Label l) {
        Point at = shift.apply(l.at());
        board.add(new Mark.Label(at, l.text(), l.lettering(), l.align(), l.degrees()));
      } else if (m instanceof Mark.Stroke s) {
        board.stroke(s.path().transformed(shift), s.pen());
      }
    }
  }
}
