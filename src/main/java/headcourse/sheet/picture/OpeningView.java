package headcourse.sheet.picture;

import headcourse.bench.HeadWork;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.job.Floor;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * An opening with its head and as much of the wall around it as its picture shows. Millimetres from
 * the centre line and the line that the head stands on, y up.
 */
final class OpeningView {
  /** Wall shown over the head. */
  private static final double OVER = 240;

  /** What is shown below the foot of an opening whose floor is not known. */
  private static final double UNDER = 150;

  private final HeadLayout layout;
  private final Opening opening;
  private final List<Length> courses;
  private final Box stones;
  private final double beside;

  OpeningView(Job job, HeadWork head, double beside) {
    this.beside = beside;
    this.layout = head.layout();
    this.opening = layout.opening();
    this.courses = job.wall().courses();
    Box all = layout.stones().get(0).outline().bounds();
    for (PlacedStone s : layout.stones()) {
      all = all.union(s.outline().bounds());
    }
    this.stones = all;
  }

  HeadLayout layout() {
    return layout;
  }

  Opening opening() {
    return opening;
  }

  Floor floor() {
    return opening.floor();
  }

  /** A side's jamb line. */
  double jamb(Side side) {
    return side.sign() * layout.jamb(side).mm();
  }

  boolean heightKnown() {
    return opening.height() != null;
  }

  boolean floorKnown() {
    return heightKnown() && floor().sill() != null;
  }

  /** Where the jambs end: the opening's foot, or somewhere below where it is not known. */
  double foot() {
    double some = Math.min(1500, Math.max(500, 0.6 * layout.halfWidth().mm() * 2));
    return heightKnown() ? -opening.height().mm() : -some;
  }

  double floorLevel() {
    return foot() - floor().sill().mm();
  }

  /** The ground; level with the floor where the job gives no step. */
  double groundLevel() {
    return floor().ground() == null ? floorLevel() : floorLevel() - floor().ground().mm();
  }

  /** Crown of the soffit: on the line that the head stands on unless it is curved. */
  double crown() {
    return layout.curved() ? layout.curve().intrados().bounds().maxY() : 0;
  }

  /** The top of the head beside its key. */
  double top() {
    return layout.curved() ? stones.maxY() : opening.head().height().mm();
  }

  double low() {
    if (!floorKnown()) {
      return heightKnown() ? foot() - UNDER : foot();
    }
    return Math.min(groundLevel(), Math.min(floorLevel(), foot()));
  }

  double high() {
    return stones.maxY() + OVER;
  }

  private double beside(Side side) {
    double end = side == Side.LEFT ? -stones.minX() : stones.maxX();
    return Math.max(end, layout.jamb(side).mm()) + beside;
  }

  private Length given(Side side) {
    return side == Side.LEFT ? opening.wallLeft() : opening.wallRight();
  }

  /** Whether the wall ends on a side rather than goes on. */
  boolean ends(Side side) {
    return given(side) != null && layout.jamb(side).plus(given(side)).mm() <= beside(side) + 150;
  }

  /** Where the wall, or its picture, ends on a side. */
  double edge(Side side) {
    double away = ends(side) ? layout.jamb(side).plus(given(side)).mm() : beside(side);
    return side.sign() * away;
  }

  /** The void of the opening: jambs, foot and soffit. */
  Path hole() {
    List<Point> corners = new ArrayList<>();
    corners.add(new Point(jamb(Side.LEFT), foot()));
    corners.add(new Point(jamb(Side.RIGHT), foot()));
    corners.add(new Point(jamb(Side.RIGHT), 0));
    if (layout.curve() != null) {
      List<Point> soffit = new ArrayList<>(layout.curve().intrados().vertices(Tolerance.VERTEX));
      if (soffit.get(0).x() < soffit.get(soffit.size() - 1).x()) {
        java.util.Collections.reverse(soffit);
      }
      soffit.stream()
          .filter(p -> p.x() > jamb(Side.LEFT) && p.x() < jamb(Side.RIGHT) && p.y() >= 0)
          .forEach(corners::add);
    }
    corners.add(new Point(jamb(Side.LEFT), 0));
    return Path.polygon(corners);
  }

  /** The bed joints that the job gives, clear of opening and stones: from and to of each part. */
  List<Point[]> courses() {
    List<Point[]> all = new ArrayList<>();
    for (Length c : courses) {
      double y = c.mm();
      if (y > low() + 1 && y < high() - 1) {
        double[] gap = gap(y);
        double left = edge(Side.LEFT);
        double right = edge(Side.RIGHT);
        if (gap == null) {
          all.add(new Point[] {new Point(left, y), new Point(right, y)});
        } else {
          all.add(new Point[] {new Point(left, y), new Point(Math.max(left, gap[0]), y)});
          all.add(new Point[] {new Point(Math.min(right, gap[1]), y), new Point(right, y)});
        }
      }
    }
    return all;
  }

  // What opening and stones take of a level; null where they take nothing.
  private double[] gap(double y) {
    double x0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    if (y < 0 && y >= foot()) {
      x0 = jamb(Side.LEFT);
      x1 = jamb(Side.RIGHT);
    }
    for (PlacedStone s : layout.stones()) {
      Box b = s.outline().bounds();
      // A joint along a stone's lower or upper edge is that edge.
      if (y <= b.minY() - 0.5 || y >= b.maxY() + 0.5) {
        continue;
      }
      double at = Math.max(b.minY() + 0.6, Math.min(b.maxY() - 0.6, y));
      for (Edge e : s.outline().edges()) {
        List<Point> run =
            Path.through(e.from(), e.at(0.25), e.at(0.5), e.at(0.75), e.to()).vertices(1);
        for (int i = 0; i + 1 < run.size(); i++) {
          Point p = run.get(i);
          Point q = run.get(i + 1);
          if ((p.y() - at) * (q.y() - at) <= 0 && Math.abs(p.y() - q.y()) > 1e-9) {
            double x = p.x() + (q.x() - p.x()) * (at - p.y()) / (q.y() - p.y());
            x0 = Math.min(x0, x);
            x1 = Math.max(x1, x);
          }
        }
      }
    }
    return x0 <= x1 ? new double[] {x0, x1} : null;
  }
}
