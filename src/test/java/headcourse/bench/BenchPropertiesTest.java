package headcourse.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.job.HeadSpec.Soffit;
import headcourse.job.Job;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.testing.Seeds;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** What holds for the pieces of every head, over random jobs of every shape. */
class BenchPropertiesTest {
  private static final int SEEDS = Seeds.of(450);
  private static final GeometryFactory JTS = new GeometryFactory();

  /** Curves flattened this finely keep JTS within a few parts in a million. */
  private static final double FINE = 1e-4;

  /** Curves that are alike are broken into chords alike, however coarse. */
  private static final double COARSE = 0.05;

  private static final List<RandomWork.Case> CASES = RandomWork.cases(SEEDS);

  private static void forAll(RandomWork.Property property) {
    CASES.forEach(property::holds);
    assertTrue(CASES.size() > SEEDS / 3, CASES.size() + " of " + SEEDS + " gave a head");
  }

  private static Polygon polygon(PlacedStone s, double tolerance) {
    List<Coordinate> ring = new ArrayList<>();
    for (Point p : s.outline().vertices(tolerance)) {
      ring.add(new Coordinate(p.x(), p.y()));
    }
    ring.add(ring.get(0));
    return JTS.createPolygon(ring.toArray(Coordinate[]::new));
  }

  /** A stone in its own frame: soffit level, lower left corner at the origin. */
  private static Geometry own(PlacedStone s) {
    Point a = s.edges(Where.SOFFIT).get(0).from();
    List<Edge> soffit = s.edges(Where.SOFFIT);
    Point b = soffit.get(soffit.size() - 1).to();
    double angle = Math.atan2(b.y() - a.y(), b.x() - a.x());
    return AffineTransformation.translationInstance(-a.x(), -a.y())
        .rotate(-angle)
        .transform(polygon(s, COARSE));
  }

  /** Mass and its centre against JTS: face slab, and return over the lowest t up to the seat. */
  @Test
  void massAgainstJts() {
    forAll(
        c -> {
          double t = c.job().stone().thickness().mm();
          double big = 1e5;
          for (Piece p : c.work().pieces()) {
            PlacedStone s = p.stone();
            Polygon face = polygon(s, FINE);
            List<Edge> soffit = s.edges(Where.SOFFIT);
            Point a = soffit.get(0).from();
            Point b = soffit.get(soffit.size() - 1).to();
            double angle = Math.atan2(b.y() - a.y(), b.x() - a.x());
            Geometry strip =
                AffineTransformation.rotationInstance(angle)
                    .translate(a.x(), a.y())
                    .transform(box(-big, -big, big, t));
            Geometry under = face.intersection(strip);
            if (p.leg().relief().isPositive()) {
              under =
                  under.intersection(
                      s.side() == Side.LEFT
                          ? box(p.leg().seatFrom(), -big, big, big)
                          : box(-big, -big, p.leg().seatFrom(), big));
            }
            double back = p.leg().depth().isPositive() ? p.leg().depth().mm() - t : 0;
            double slab = t * face.getArea();
            double run = back * under.getArea();
            String name = c.name() + " " + s.mark();
            assertEquals(slab + run, p.mass().volumeM3() * 1e9, 2e-5 * slab, name);
            assertEquals(
                p.mass().volumeM3() * c.job().stone().density(), p.mass().kg(), 1e-9, name);
            double x = slab * face.getCentroid().getX();
            double y = slab * face.getCentroid().getY();
            if (run > 0) {
              x += run * under.getCentroid().getX();
              y += run * under.getCentroid().getY();
            }
            assertEquals(x / (slab + run), p.mass().centre().x(), 0.01, name);
            assertEquals(y / (slab + run), p.mass().centre().y(), 0.01, name);
            assertTrue(p.mass().depth() >= t / 2 - 1e-9, name);
          }
        });
  }

  private static Geometry box(double x0, double y0, double x1, double y1) {
    return JTS.toGeometry(new org.locationtech.jts.geom.Envelope(x0, x1, y0, y1));
  }

  @Test
  void measuresJoinTheCorners() {
    forAll(
        c -> {
          for (Piece p : c.work().pieces()) {
            List<Edge> right = p.stone().edges(Where.RIGHT);
            List<Edge> left = p.stone().edges(Where.LEFT);
            Point a = p.stone().outline().start();
            Point b = right.get(0).from();
            Point d = right.get(right.size() - 1).to();
            Point e = left.get(0).from();
            String name = c.name() + " " + p.mark();
            assertEquals(a.distance(d), p.measures().rising().mm(), 1e-8, name);
            assertEquals(b.distance(e), p.measures().falling().mm(), 1e-8, name);
            assertEquals(b.distance(d), p.measures().rightEdge().mm(), 1e-8, name);
            assertEquals(e.distance(a), p.measures().leftEdge().mm(), 1e-8, name);
            // The law of cosines gives the same corner as the rake does.
            double w = a.distance(b);
            double r = p.measures().rightEdge().mm();
            double corner = Math.acos((w * w + r * r - Math.pow(a.distance(d), 2)) / (2 * w * r));
            double rake = p.right().offSquare().radians();
            double lean = p.right().longPoint() == Rake.LongPoint.TOP ? rake : -rake;
            assertEquals(Math.PI / 2 + lean, corner, 1e-7, name);
          }
        });
  }

  /** Cover and penetration are kept wherever a slot on the grid keeps them; else it is said. */
  @Test
  void notchesKeepTheirBounds() {
    forAll(
        c -> {
          Job job = c.job();
          for (Piece p : c.work().pieces()) {
            assertFalse(p.notches().isEmpty(), c.name() + " " + p.mark());
            for (Notch n : p.notches()) {
              String name = c.name() + " " + p.mark() + " " + n.edge();
              assertEquals(
                  Math.atan2(n.mouth().mm(), n.run().mm()), n.slant().radians(), 1e-12, name);
              assertTrue(n.cover().compareTo(p.thickness().minus(n.mouth())) <= 0, name);
              boolean covered = n.cover().compareTo(job.fastener().cover()) >= 0;
              boolean bites =
                  n.screw() != null && n.penetration().compareTo(job.fastener().embedment()) >= 0;
              assertEquals(n.screw() != null, bites, name);
              if (!covered) {
                // Then even a mouth of one tick would be too near the face.
                Length least = p.thickness().minus(job.grid().tick());
                assertTrue(least.compareTo(job.fastener().cover()) < 0, name);
              } else if (bites) {
                shorterDoesNotReach(job, p, n, name);
              }
              assertTrue(job.grid().holds(n.mouth()) && job.grid().holds(n.run()), name);
              assertTrue(job.grid().holds(n.height()) && n.reachable(), name);
            }
          }
        });
  }

  /** Clear of both ends, and one at least above the centre of mass, wherever the edge has room. */
  @Test
  void notchesStandWhereTheyShould() {
    forAll(
        c -> {
          double tick = c.job().grid().tick().mm();
          double clear =
              Math.max(
                  c.job().units() == Units.INCH ? 50.8 : 50, 2 * c.job().stone().thickness().mm());
          for (Piece p : c.work().pieces()) {
            StoneFrame f = StoneFrame.of(p.stone());
            for (Where side : List.of(Where.LEFT, Where.RIGHT)) {
              EdgeName edge = f.name(side);
              List<Notch> on = p.notches().stream().filter(n -> n.edge() == edge).toList();
              boolean cut = p.exposed().stream().anyMatch(e -> e.edge() == edge);
              double length = f.chord(side);
              if (on.isEmpty() || cut || length < 2 * (clear + tick)) {
                continue;
              }
              String name = c.name() + " " + p.mark() + " " + edge;
              for (Notch n : on) {
                double h = n.height().mm();
                assertTrue(Math.min(h, length - h) >= clear - 1e-5, name);
                assertEquals(h, n.at().distance(f.low(side)), 1e-7, name);
              }
              double mass = p.mass().centre().minus(f.low(side)).dot(f.upward(side));
              if (mass <= length - clear - tick) {
                assertTrue(on.stream().anyMatch(n -> n.height().mm() >= mass - 1e-5), name);
              }
            }
          }
        });
  }

  private static void shorterDoesNotReach(Job job, Piece p, Notch n, String name) {
    double idle = job.wall().bed().plus(p.stone().proud()).plus(job.wall().scratch()).mm();
    idle += job.wall().sheathing().thickness().mm();
    double c = Math.hypot(n.mouth().mm(), n.run().mm());
    double sin = n.mouth().mm() / c;
    assertEquals((n.screw().mm() - c) * sin - idle, n.penetration().mm(), 1e-8, name);
    for (Length l : job.fastener().lengths()) {
      boolean reaches = (l.mm() - c) * sin - idle >= job.fastener().embedment().mm();
      assertTrue(l.compareTo(n.screw()) >= 0 || !reaches, name);
    }
  }

  /** Setting the stones one by one, every slot is open when its stone goes up and closed after. */
  @Test
  void settingByTheOrder() {
    forAll(
        c -> {
          List<PlacedStone> row = c.work().layout().stones();
          Set<String> up = new HashSet<>();
          int number = 0;
          for (Piece p : c.work().inSettingOrder()) {
            assertEquals(++number, p.setOrder(), c.name());
            int at = row.indexOf(p.stone());
            for (Notch n : p.notches()) {
              boolean left =
                  n.edge() == EdgeName.LEFT
                      || n.edge()
                          == (p.stone().side() == Side.LEFT ? EdgeName.OUTER : EdgeName.INNER);
              int beside = left ? at - 1 : at + 1;
              boolean wall = beside < 0 || beside >= row.size();
              String hides =
                  wall ? "wall" : c.job().setting().dry() ? row.get(beside).mark() : "joint";
              if (c.job().setting().dry() && !wall) {
                assertFalse(up.contains(row.get(beside).mark()), c.name() + " " + p.mark());
              }
              assertTrue(
                  n.hiddenBy().equals(hides) || n.hiddenBy().isEmpty(), c.name() + " " + p.mark());
            }
            up.add(p.stone().mark());
          }
        });
  }

  @Test
  void alikePiecesLieOnEachOther() {
    forAll(
        c -> {
          Map<Integer, Piece> firsts = new TreeMap<>();
          for (Piece b : c.work().pieces()) {
            Piece a = firsts.putIfAbsent(b.alike(), b);
            if (a != null) {
              String name = c.name() + " " + a.mark() + " " + b.mark();
              assertTrue(apart(own(a.stone()), own(b.stone())) < 1e-6, name);
              assertEquals(a.mass().kg(), b.mass().kg(), 1e-9, name);
              assertEquals(a.leg().relief(), b.leg().relief(), name);
              assertEquals(a.saw().size(), b.saw().size(), name);
              assertEquals(a.notches().size(), b.notches().size(), name);
            }
          }
        });
  }

  private static double apart(Geometry a, Geometry b) {
    return org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance.distance(a, b);
  }

  @Test
  void mirroredHeadGivesMirroredPieces() {
    forAll(
        c -> {
          HeadWork twin = HeadBench.workUp(c.job(), MirroredHead.of(c.work().layout()));
          for (Piece p : c.work().pieces()) {
            Piece q = twin.piece(MirroredHead.mark(p.stone().mark()));
            String name = c.name() + " " + p.mark();
            assertNotNull(q, name);
            assertEquals(p.mass().kg(), q.mass().kg(), 1e-7, name);
            assertEquals(p.leg().relief(), q.leg().relief(), name);
            assertEquals(p.leg().depth(), q.leg().depth(), name);
            assertEquals(p.measures().leftEdge().mm(), q.measures().rightEdge().mm(), 1e-7, name);
            assertEquals(p.measures().rising().mm(), q.measures().falling().mm(), 1e-7, name);
            assertEquals(
                p.left().offSquare().radians(), q.right().offSquare().radians(), 1e-9, name);
            assertEquals(p.left().longPoint(), q.right().longPoint(), name);
            assertEquals(-p.mass().centre().x(), q.mass().centre().x(), 1e-6, name);
            assertEquals(p.exposed().size(), q.exposed().size(), name);
            // The key's slots change places; others keep their edge's name.
            for (Notch m : p.notches()) {
              Notch n =
                  q.notches().stream()
                      .filter(o -> Math.abs(o.at().x() + m.at().x()) < 1e-6)
                      .filter(o -> o.height().equals(m.height()))
                      .findFirst()
                      .orElseThrow(
                          () -> new AssertionError(name + ": " + m + " in " + q.notches()));
              assertEquals(m.mouth(), n.mouth(), name);
              assertEquals(m.screw(), n.screw(), name);
              assertEquals(m.hiddenBy().isEmpty(), n.hiddenBy().isEmpty(), name);
            }
          }
          assertEquals(
              c.work().stackUps().get(0).bearingLeast(),
              twin.stackUps().get(1).bearingLeast(),
              c.name());
        });
  }

  /** A return ends on the jamb's seat, at most a tick past it, and never short of the jamb. */
  @Test
  void reliefEndsOnTheSeat() {
    forAll(
        c -> {
          double seat =
              c.work().layout().halfWidth().plus(c.job().openings().get(0).head().seat()).mm();
          double tick = c.job().grid().tick().mm();
          for (Piece p : c.work().pieces()) {
            String name = c.name() + " " + p.mark();
            boolean none = c.job().openings().get(0).head().soffit() == Soffit.NONE;
            assertTrue(!none || p.leg().depth().isZero(), name);
            if (p.leg().relief().isPositive()) {
              double x = p.stone().side().sign() * p.leg().seatFrom();
              assertTrue(x >= seat - 1e-5 && x < seat + tick, name + " " + x + " " + seat);
              assertTrue(c.job().grid().holds(p.leg().relief()), name);
            }
          }
        });
  }

  /** Every cut of the saw lies in the plane of its edge: tilt and mitre give the rake back. */
  @Test
  void sawFollowsTheRake() {
    forAll(
        c -> {
          for (Piece p : c.work().pieces()) {
            for (SawPass s : p.saw()) {
              String name = c.name() + " " + p.mark() + " pass " + s.number();
              if (s.edge() == EdgeName.TOP || s.edge() == EdgeName.SOFFIT) {
                continue;
              }
              boolean left =
                  s.edge() == EdgeName.LEFT
                      || s.edge()
                          == (p.stone().side() == Side.LEFT ? EdgeName.OUTER : EdgeName.INNER);
              double rake = (left ? p.left() : p.right()).offSquare().radians();
              boolean seatEnd =
                  s.part() == SawPass.Part.SOFFIT_PIECE
                      && s.edge() == EdgeName.OUTER
                      && p.leg().relief().isPositive();
              if (!seatEnd) {
                assertEquals(rake, s.mitre().radians() + s.tilt().radians(), 1e-9, name);
              }
              assertTrue(s.mitre().radians() == 0 || s.tilt().radians() == 0, name);
              boolean deepEnough = s.depth().compareTo(c.job().tools().saw().depthOfCut()) <= 0;
              assertTrue(deepEnough || !s.possible(), name);
            }
          }
        });
  }
}
