package headcourse.sheet.contractor;

import headcourse.drawing.Board;
import headcourse.drawing.Pen;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Tolerance;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * The cloud around neighbouring stones that changed: bulges outwards along their common outline.
 *
 * @param outline around them, against the clock, model space
 */
record RevisionCloud(List<Point> outline) {
  /** Length of a bulge along the outline on paper, mm. */
  private static final double BULGE = 4;

  private static final int PARTS = 6;

  /** One for each run of neighbours among some stones of a head. */
  static List<RevisionCloud> around(HeadLayout head, Set<String> marks) {
    List<RevisionCloud> clouds = new ArrayList<>();
    List<PlacedStone> run = new ArrayList<>();
    for (PlacedStone s : head.stones()) {
      if (marks.contains(s.mark())) {
        run.add(s);
      } else if (!run.isEmpty()) {
        clouds.add(of(run));
        run.clear();
      }
    }
    if (!run.isEmpty()) {
      clouds.add(of(run));
    }
    return clouds;
  }

  // Along the soffits to the right, and back along the tops.
  private static RevisionCloud of(List<PlacedStone> run) {
    List<Point> low = new ArrayList<>();
    List<Point> high = new ArrayList<>();
    for (PlacedStone s : run) {
      low.addAll(rightwards(s.edges(FaceEdge.Where.SOFFIT)));
      high.addAll(rightwards(s.edges(FaceEdge.Where.TOP)));
    }
    Collections.reverse(high);
    low.addAll(high);
    return new RevisionCloud(List.copyOf(low));
  }

  private static List<Point> rightwards(List<Edge> edges) {
    List<Point> all = new ArrayList<>();
    for (Edge e : edges) {
      all.addAll(new Path(List.of(e), false).vertices(Tolerance.VERTEX));
    }
    if (all.size() > 1 && all.get(0).x() > all.get(all.size() - 1).x()) {
      Collections.reverse(all);
    }
    return all;
  }

  /** Draws it; it makes way for texts. */
  void draw(Board board, Similarity view) {
    List<Point> corners = new ArrayList<>();
    for (Point p : outline) {
      Point q = view.apply(p);
      if (corners.isEmpty() || corners.get(corners.size() - 1).distance(q) > 0.05) {
        corners.add(q);
      }
    }
    if (corners.size() < 3) {
      return;
    }
    corners.add(corners.get(0));
    List<Point> feet = feet(corners);
    for (int i = 0; i + 1 < feet.size(); i++) {
      bulge(board, feet.get(i), feet.get(i + 1));
    }
  }

  // Places along the outline that bulges stand between, as far apart as they may be.
  private static List<Point> feet(List<Point> corners) {
    double length = 0;
    for (int i = 0; i + 1 < corners.size(); i++) {
      length += corners.get(i).distance(corners.get(i + 1));
    }
    int n = Math.max(4, (int) Math.round(length / BULGE));
    double step = length / n;
    List<Point> feet = new ArrayList<>(List.of(corners.get(0)));
    double gone = 0;
    for (int i = 0; i + 1 < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get(i + 1);
      double side = a.distance(b);
      while (feet.size() < n && feet.size() * step <= gone + side) {
        feet.add(a.towards(b, (feet.size() * step - gone) / side));
      }
      gone += side;
    }
    feet.add(corners.get(0));
    return feet;
  }

  // Half round, to the right of the way: the outline runs against the clock as seen.
  private static void bulge(Board board, Point a, Point b) {
    if (a.distance(b) < 0.2) {
      return;
    }
    Point middle = a.towards(b, 0.5);
    Vec half = b.minus(middle);
    Vec out = half.normal().times(0.7);
    Point before = a;
    for (int i = 1; i <= PARTS; i++) {
      double turn = Math.PI * (1 - (double) i / PARTS);
      Point next = middle.plus(half.times(Math.cos(turn))).plus(out.times(Math.sin(turn)));
      board.lineAround(before, next, Pen.EDGE);
      before = next;
    }
  }
}
