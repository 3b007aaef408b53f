package headcourse.layout.curved;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import headcourse.job.Job;
import headcourse.layout.FaceEdge;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Random heads of every shape: stones and joints fill the ring, nothing overlaps. */
class RingPropertyTest {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final int JOBS = Seeds.of(60);

  /** How fine curves are flattened for JTS; the areas compared are exact. */
  private static final double FINE = 1e-3;

  static final String[] SHAPES = RandomHeads.SHAPES;

  @ParameterizedTest
  @FieldSource("SHAPES")
  void everyHeadHolds(String shape) {
    int solved = 0;
    for (int i = 0; i < JOBS; i++) {
      long seed = 7919L * i + shape.hashCode();
      Job job = RandomHeads.job(shape, seed).make();
      Solution s = Shapes.named(shape).orElseThrow().setOut(job, job.openings().get(0));
      if (s instanceof Solution.Solved ok) {
        solved++;
        check(job, ok.head(), shape + ", seed " + seed);
      }
    }
    assertTrue(solved > JOBS * 3 / 4, shape + ": " + solved + " of " + JOBS + " solved");
  }

  private static void check(Job job, HeadLayout head, String name) {
    double joint = job.setting().joint().mm();
    double area = 0;
    for (PlacedStone s : head.stones()) {
      closed(s, name);
      area += s.outline().area();
    }
    mirrored(head, name);
    jointsAreSquare(head, name);
    noOverlap(head, joint, name);
    boolean plainKey =
        job.openings().get(0).head().key() == null
            || job.openings().get(0).head().key().bottom() == null;
    if (plainKey) {
      Path ring = ring(head);
      if (joint == 0) {
        assertEquals(ring.area(), area, 1e-6 * ring.area(), name);
      }
      stonesAndJointsFill(head, ring, joint, area, name);
    }
    intradosIsSmooth(head, name);
  }

  /**
   * Each face runs counter-clockwise, closed, and has no inner corner but a point in its soffit.
   */
  private static void closed(PlacedStone s, String name) {
    List<Edge> edges = s.outline().edges();
    for (int i = 0; i < edges.size(); i++) {
      Edge next = edges.get((i + 1) % edges.size());
      HeadAssert.same(edges.get(i).to(), next.from(), 1e-7);
      boolean point =
          where(s, i) == FaceEdge.Where.SOFFIT
              && where(s, (i + 1) % edges.size()) == FaceEdge.Where.SOFFIT;
      if (!point) {
        double turn = edges.get(i).tangent(1).cross(next.tangent(0));
        // The arcs fitted to a parallel curve meet within three hundredths of a degree.
        assertTrue(turn > -5e-4, name + " " + s.mark() + ": an inner corner, " + turn);
      }
      assertTrue(edges.get(i).length() > 1e-7, name + " " + s.mark() + ": an edge of no length");
    }
    assertTrue(s.outline().area() > 0, name + " " + s.mark());
    assertEquals(FaceEdge.Where.SOFFIT, s.face().get(0).where());
  }

  private static FaceEdge.Where where(PlacedStone s, int edge) {
    return s.face().get(edge).where();
  }

  private static void mirrored(HeadLayout head, String name) {
    for (PlacedStone s : head.stones()) {
      String twin =
          s.side() == Side.CENTRE ? s.mark() : (s.side() == Side.LEFT ? "R" : "L") + s.index();
      PlacedStone t = head.stone(twin);
      assertEquals(s.outline().area(), t.outline().area(), 1e-6, name);
      assertEquals(s.bottom(), t.bottom(), name);
      assertEquals(s.top(), t.top(), name);
      HeadAssert.same(
          s.outline().start(), t.edges(FaceEdge.Where.RIGHT).get(0).from().mirrored(), 1e-8);
      assertEquals(s.chordDeviation(), t.chordDeviation(), 1e-9, name);
    }
  }

  /** Joint lines meet the soffit square; but for the plumb one in a crown without a key. */
  private static void jointsAreSquare(HeadLayout head, String name) {
    List<Edge> soffit = head.curve().intrados().edges();
    for (JointLine j : head.joints()) {
      boolean crownJoint = j.index() == 0 && head.stones().size() % 2 == 0;
      if (crownJoint) {
        assertEquals(0, j.foot().x(), 1e-9, name);
        assertEquals(0, j.head().x(), 1e-9, name);
        continue;
      }
      Vec along = j.head().minus(j.foot()).unit();
      // The foot is the nearest place of the whole soffit to any place up the line.
      Point up = j.foot().plus(along.times(10));
      double nearest = Double.POSITIVE_INFINITY;
      for (Edge e : soffit) {
        for (int k = 0; k <= 400; k++) {
          nearest = Math.min(nearest, up.distance(e.at(k / 400.0)));
        }
      }
      assertTrue(nearest >= 10 - 1e-7, name + " joint " + j.index() + ": " + nearest);
    }
  }

  private static void intradosIsSmooth(HeadLayout head, String name) {
    List<Edge> edges = head.curve().intrados().edges();
    for (int i = 1; i < edges.size(); i++) {
      HeadAssert.same(edges.get(i - 1).to(), edges.get(i).from(), 1e-7);
      boolean crown = Math.abs(edges.get(i).from().x()) < 1e-9;
      if (!crown) {
        assertEquals(0, edges.get(i - 1).tangent(1).cross(edges.get(i).tangent(0)), 1e-9, name);
      }
    }
  }

  private static Path ring(HeadLayout head) {
    Path in = head.curve().intrados();
    Path out = head.curve().extrados();
    List<Edge> edges = new ArrayList<>(in.edges());
    Point right = out.edges().get(out.edges().size() - 1).to();
    edges.add(new Straight(in.edges().get(in.edges().size() - 1).to(), right));
    for (int i = out.edges().size() - 1; i >= 0; i--) {
      edges.add(out.edges().get(i).reversed());
    }
    edges.add(new Straight(out.start(), in.start()));
    return new Path(edges, true);
  }

  private static Geometry polygon(Path path) {
    List<Point> points = path.vertices(FINE);
    Coordinate[] c = new Coordinate[points.size() + 1];
    for (int i = 0; i < points.size(); i++) {
      c[i] = new Coordinate(points.get(i).x(), points.get(i).y());
    }
    c[points.size()] = c[0];
    return JTS.createPolygon(c);
  }

  private static void noOverlap(HeadLayout head, double joint, String name) {
    List<Geometry> faces = head.stones().stream().map(s -> polygon(s.outline())).toList();
    for (int i = 0; i < faces.size(); i++) {
      assertTrue(faces.get(i).isValid(), name + " " + head.stones().get(i).mark());
      for (int k = i + 1; k < faces.size(); k++) {
        if (faces.get(i).getEnvelope().intersects(faces.get(k).getEnvelope())) {
          double common =
              OverlayNGRobust.overlay(faces.get(i), faces.get(k), OverlayNG.INTERSECTION).getArea();
          // Both sides of a dry joint flatten the curve that they share in their own way.
          assertTrue(common < 1e-3, name + ": " + common);
          if (k == i + 1 && joint > 0) {
            assertEquals(joint, faces.get(i).distance(faces.get(k)), 1e-6, name);
          }
        }
      }
    }
  }

  /** Strips of the joint's width laid over the joint lines, and the stones, cover the ring. */
  private static void stonesAndJointsFill(
      HeadLayout head, Path ring, double joint, double area, String name) {
    if (joint == 0) {
      return;
    }
    Geometry left = polygon(ring);
    // What flattening the curves leaves out of the polygon, or adds.
    double flattening = ring.area() - left.getArea();
    for (JointLine j : head.joints()) {
      Vec along = j.head().minus(j.foot()).unit();
      Vec side = along.normal().times(joint / 2);
      Point a = j.foot().plus(along.times(-2 * joint));
      Point b = j.head().plus(along.times(2 * joint + j.head().distance(j.foot())));
      Path strip =
          Path.polygon(a.plus(side), a.plus(side.times(-1)), b.plus(side.times(-1)), b.plus(side));
      left = OverlayNGRobust.overlay(left, polygon(strip), OverlayNG.DIFFERENCE);
    }
    assertEquals(left.getArea() + flattening, area, 1e-6 * ring.area(), name);
  }
}
