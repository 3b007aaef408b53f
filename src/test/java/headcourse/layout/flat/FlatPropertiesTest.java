package headcourse.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** What holds for every flat head, over thousands of random jobs. */
class FlatPropertiesTest {
  private static final int RUNS = Seeds.of(2000);
  private static final GeometryFactory JTS = new GeometryFactory();

  private interface Property {
    void holds(Job job, HeadLayout head, String at);
  }

  private static Solution solve(Job job) {
    Opening o = job.openings().get(0);
    return Shapes.named(o.head().shape()).orElseThrow().setOut(job, o);
  }

  private record Tried(Job job, Solution solution) {}

  /** Every job by its seed, solved once for all properties. */
  private static List<Tried> tried;

  @BeforeAll
  static void solveAll() {
    tried = new ArrayList<>();
    for (long seed = 0; seed < RUNS; seed++) {
      Job job = RandomJobs.flat(seed).make();
      tried.add(new Tried(job, solve(job)));
    }
  }

  private static void forAll(Property property) {
    int solved = 0;
    for (int seed = 0; seed < RUNS; seed++) {
      if (tried.get(seed).solution() instanceof Solution.Solved s) {
        solved++;
        property.holds(tried.get(seed).job(), s.head(), "seed " + seed);
      }
    }
    assertTrue(solved > RUNS / 3, "only " + solved + " of " + RUNS + " jobs had a solution");
  }

  /** Against JTS: neighbours stand exactly a joint apart and nothing overlaps. */
  @Test
  void jointsAreExact() {
    forAll(
        (job, head, at) -> {
          double joint = job.setting().joint().mm();
          Polygon last = null;
          for (PlacedStone s : head.stones()) {
            Polygon p = polygon(s);
            assertTrue(p.isValid(), at + " " + s.mark());
            if (last != null) {
              assertEquals(joint, p.distance(last), 1e-6, at + " " + s.mark());
              assertEquals(0, p.intersection(last).getArea(), 1e-6, at + " " + s.mark());
            }
            last = p;
          }
        });
  }

  private static Polygon polygon(PlacedStone s) {
    List<Coordinate> ring = new ArrayList<>();
    for (Point p : s.outline().vertices(0.001)) {
      ring.add(new Coordinate(p.x(), p.y()));
    }
    ring.add(ring.get(0));
    return JTS.createPolygon(ring.toArray(Coordinate[]::new));
  }

  /** Every outline is closed, counter-clockwise, and begins at the lower left corner. */
  @Test
  void outlinesAreClosed() {
    forAll(
        (job, head, at) -> {
          for (PlacedStone s : head.stones()) {
            List<Edge> edges = s.outline().edges();
            for (int i = 0; i < edges.size(); i++) {
              Point next = edges.get((i + 1) % edges.size()).from();
              assertEquals(0, edges.get(i).to().distance(next), 1e-6, at + " " + s.mark());
            }
            assertTrue(s.outline().area() > 0, at + " " + s.mark());
          }
        });
  }

  /** Widths, joints, marks and overall sizes are on the grid and add up. */
  @Test
  void sizesAddUp() {
    forAll(
        (job, head, at) -> {
          Grid grid = job.grid();
          boolean dry = job.setting().joint().isZero();
          boolean level = !head.opening().head().params().values().containsKey("camber");
          Length sum = head.stones().get(0).feet().leftSoffit();
          boolean plumb = true;
          for (PlacedStone s : head.stones()) {
            PlacedStone.Feet f = s.feet();
            for (Length l :
                List.of(
                    s.bottom(),
                    s.top(),
                    f.leftSoffit(),
                    f.rightSoffit(),
                    f.leftTop(),
                    f.rightTop())) {
              assertTrue(grid.holds(l), at + " " + s.mark() + " " + l);
            }
            boolean upright =
                f.leftSoffit().equals(f.leftTop()) && f.rightSoffit().equals(f.rightTop());
            plumb &= upright;
            if (s.role() != Role.KEY && level && (dry || upright)) {
              assertEquals(s.bottom(), f.rightSoffit().minus(f.leftSoffit()), at + s.mark());
              assertEquals(s.top(), f.rightTop().minus(f.leftTop()), at + s.mark());
            }
            sum = sum.plus(s.bottom()).plus(job.setting().joint());
          }
          Length right = head.stones().get(head.stones().size() - 1).feet().rightSoffit();
          if (plumb && level) {
            assertEquals(right.plus(job.setting().joint()), sum, at);
          }
          assertEquals(right, head.halfWidth().plus(head.bearing(Side.RIGHT).onWall()), at);
          marksAreFeet(head, at);
        });
  }

  /** Widths run as the rhythm says, on the line that they are counted on. */
  @Test
  void rhythms() {
    forAll(
        (job, head, at) -> {
          HeadSpec.Stones s = head.opening().head().stones();
          boolean jack = head.opening().head().shape().equals("jack");
          String divide =
              head.opening().head().params().word("divide").orElse(jack ? "soffit" : "");
          if (jack && !job.setting().joint().isZero()) {
            // Beside mortar the feet printed are those of the stones, not of the joint lines.
            return;
          }
          for (Side side : new Side[] {Side.LEFT, Side.RIGHT}) {
            List<Length> widths =
                head.stones().stream()
                    .filter(x -> x.side() == side)
                    .sorted(Comparator.comparingInt(PlacedStone::index))
                    .map(x -> width(x, divide.equals("top")))
                    .toList();
            inOrder(widths, s, job.grid().tick(), jack, divide.equals("angle"), at);
          }
        });
  }

  private static Length width(PlacedStone s, boolean top) {
    PlacedStone.Feet f = s.feet();
    return top ? f.rightTop().minus(f.leftTop()) : f.rightSoffit().minus(f.leftSoffit());
  }

  private static void inOrder(
      List<Length> widths, HeadSpec.Stones s, Length tick, boolean jack, boolean angle, String at) {
    // Eased joints beside mortar, and fanned stones called even, may be a tick off.
    Length slack = jack ? tick : Length.ZERO;
    for (int i = 0; i < widths.size(); i++) {
      Length w = widths.get(i);
      assertTrue(w.compareTo(s.min()) >= 0 && w.compareTo(s.max()) <= 0, at + " " + widths);
      if (i == 0) {
        continue;
      }
      Length drop = widths.get(i - 1).minus(w);
      switch (s.rhythm()) {
        case EVEN -> assertTrue(angle || drop.abs().compareTo(slack) <= 0, at + " " + widths);
        case GRADED ->
            assertTrue(
                drop.minus(s.step()).abs().compareTo(slack.times(2)) <= 0
                    || angle && s.step().isZero(),
                at + " " + widths);
        default -> {
          assertTrue(drop.abs().compareTo(s.step()) >= 0, at + " " + widths);
          assertTrue(s.jump() == null || drop.abs().compareTo(s.jump()) <= 0, at + " " + widths);
          assertTrue(i < 2 || !drop.isZero() || !widths.get(i - 2).equals(w), at + " " + widths);
        }
      }
    }
  }

  private static void marksAreFeet(HeadLayout head, String at) {
    for (JointLine j : head.joints()) {
      assertTrue(j.soffitMark().picometres() >= 0, at);
      if (j.inner().isEmpty()) {
        continue;
      }
      PlacedStone.Feet f = head.stone(j.inner()).feet();
      boolean left = j.side() == Side.LEFT;
      assertEquals(j.soffitMark(), left ? f.leftSoffit().negated() : f.rightSoffit(), at);
      assertEquals(j.topMark(), left ? f.leftTop().negated() : f.rightTop(), at);
    }
  }

  /** No joint within clear of a jamb, no end short of its bearing or past its wall, ever. */
  @Test
  void jambsAndBearings() {
    forAll(
        (job, head, at) -> {
          Opening o = head.opening();
          HeadSpec h = o.head();
          boolean jack = h.shape().equals("jack");
          for (Length b :
              List.of(head.bearing(Side.LEFT).onWall(), head.bearing(Side.RIGHT).onWall())) {
            assertTrue(b.compareTo(h.bearing().min()) >= 0, at);
            assertTrue(b.compareTo(h.bearing().max()) <= 0, at);
          }
          if (o.wallLeft() != null) {
            assertTrue(head.bearing(Side.LEFT).onWall().compareTo(o.wallLeft()) <= 0, at);
          }
          if (o.wallRight() != null) {
            assertTrue(head.bearing(Side.RIGHT).onWall().compareTo(o.wallRight()) <= 0, at);
          }
          double clear = h.clear().mm();
          double half = o.width().mm() / 2;
          for (PlacedStone s : head.stones()) {
            boolean springs =
                jack
                    && s.role() == Role.END
                    && (s.side() == Side.LEFT
                                ? head.bearing(Side.LEFT).onWall()
                                : head.bearing(Side.RIGHT).onWall())
                            .compareTo(job.grid().tick())
                        < 0;
            for (boolean left : new boolean[] {true, false}) {
              boolean outer = left == (s.side() == Side.LEFT);
              if (springs && outer) {
                continue;
              }
              double x = Math.abs((left ? s.feet().leftSoffit() : s.feet().rightSoffit()).mm());
              double t = Math.abs((left ? s.feet().leftTop() : s.feet().rightTop()).mm());
              // Where a raked edge meets mortar its printed foot is rounded, by up to half a tick.
              double slack = job.setting().joint().isZero() ? 1e-9 : job.grid().tick().mm() * 0.501;
              assertTrue(Math.abs(x - half) >= clear - slack, at + " " + s.mark());
              assertTrue(jack || Math.abs(t - half) >= clear - slack, at + " " + s.mark());
            }
          }
        });
  }

  /** Both sides are alike, whatever the walls, unless mixed widths need not mirror. */
  @Test
  void sidesAreAlike() {
    forAll(
        (job, head, at) -> {
          HeadSpec.Stones s = head.opening().head().stones();
          if (!s.mirror() && s.rhythm() == HeadSpec.Rhythm.MIXED) {
            return;
          }
          int n = head.stones().size();
          for (int i = 0; i < n; i++) {
            PlacedStone.Feet a = head.stones().get(i).feet();
            PlacedStone.Feet b = head.stones().get(n - 1 - i).feet();
            assertEquals(a.leftSoffit(), b.rightSoffit().negated(), at);
            assertEquals(a.leftTop(), b.rightTop().negated(), at);
          }
        });
  }

  /** The job turned over left to right gives the head turned over. */
  @Test
  void mirrors() {
    for (long seed = 0; seed < RUNS / 2; seed++) {
      JobMaker maker = RandomJobs.flat(seed);
      maker.first().mirror = true;
      Solution one = solve(maker.make());
      Length left = maker.first().wallLeft;
      maker.first().wallLeft = maker.first().wallRight;
      maker.first().wallRight = left;
      Solution other = solve(maker.make());
      assertEquals(one.getClass(), other.getClass(), "seed " + seed);
      if (one instanceof Solution.Solved a && other instanceof Solution.Solved b) {
        int n = a.head().stones().size();
        assertEquals(n, b.head().stones().size(), "seed " + seed);
        for (int i = 0; i < n; i++) {
          PlacedStone p = a.head().stones().get(i);
          PlacedStone q = b.head().stones().get(n - 1 - i);
          assertEquals(p.bottom(), q.bottom(), "seed " + seed);
          assertEquals(p.top(), q.top(), "seed " + seed);
          assertEquals(p.feet().leftSoffit(), q.feet().rightSoffit().negated(), "seed " + seed);
          assertEquals(p.feet().leftTop(), q.feet().rightTop().negated(), "seed " + seed);
        }
      }
    }
  }

  /** An inch job and the same job in millimetres give the same picometres. */
  @Test
  void metricTwin() {
    for (int seed = 0; seed < RUNS; seed++) {
      JobMaker maker = RandomJobs.flat(seed);
      Solution one = tried.get(seed).solution();
      maker.units = maker.units == Units.INCH ? Units.MILLIMETRE : Units.INCH;
      Solution other = solve(maker.make());
      assertEquals(one.getClass(), other.getClass(), "seed " + seed);
      if (one instanceof Solution.Solved a && other instanceof Solution.Solved b) {
        assertEquals(a.head().stones(), b.head().stones(), "seed " + seed);
        assertEquals(a.head().joints(), b.head().joints(), "seed " + seed);
      }
    }
  }
}
