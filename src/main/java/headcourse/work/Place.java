package headcourse.work;

import headcourse.geom.Point;
import headcourse.geom.Tolerance;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.Jambs;
import headcourse.layout.PlacedStone;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * An opening at its place along the wall.
 *
 * @param number the opening's number in the job
 * @param opening the opening
 * @param left its left jamb line, along the wall
 * @param right its right jamb line
 * @param centre its centre line
 */
record Place(int number, Opening opening, Length left, Length right, Length centre) {
  /** Those of a job whose places it gives, from left to right. */
  static List<Place> of(Job job) {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < job.openings().size(); i++) {
      Opening o = job.openings().get(i);
      Jambs jambs = Jambs.of(o);
      for (Length at : o.at()) {
        places.add(new Place(i, o, at.minus(jambs.left()), at.plus(jambs.right()), at));
      }
    }
    places.sort(Comparator.comparing(Place::left).thenComparing(Place::number));
    return places;
  }

  /** Whether both say how high they stand; those that don't are taken to stand in one storey. */
  static boolean levelled(Place a, Place b) {
    return a.opening.level() != null && b.opening.level() != null;
  }

  /** Whether two openings with their heads stand side by side, rather than one above the other. */
  static boolean beside(Place a, Place b) {
    return !levelled(a, b) || a.foot().compareTo(b.top()) < 0 && b.foot().compareTo(a.top()) < 0;
  }

  private Length foot() {
    Length height = opening.height();
    return height == null ? opening.level() : opening.level().minus(height);
  }

  private Length top() {
    return opening.level().plus(opening.head().height());
  }

  /** The edges of a head where it stands, level with a mark, as pairs of places; mm. */
  List<Point[]> edges(HeadLayout head, boolean levelled) {
    double x = centre.mm();
    double y = levelled ? opening.level().mm() : 0;
    List<Point[]> all = new ArrayList<>();
    for (PlacedStone stone : head.stones()) {
      List<Point> run = stone.outline().vertices(Tolerance.VERTEX);
      for (int i = 0; i < run.size(); i++) {
        Point next = run.get((i + 1) % run.size());
        all.add(new Point[] {moved(run.get(i), x, y), moved(next, x, y)});
      }
    }
    return all;
  }

  /** The jambs of the opening itself where it is known how high it is; mm. */
  List<Point[]> jambs() {
    List<Point[]> all = new ArrayList<>();
    for (Length x : List.of(left, right)) {
      all.add(
          new Point[] {new Point(x.mm(), foot().mm()), new Point(x.mm(), opening.level().mm())});
    }
    return all;
  }

  private static Point moved(Point p, double x, double y) {
    return new Point(p.x() + x, p.y() + y);
  }
}
