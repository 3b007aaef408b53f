package headcourse.layout.curved;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.layout.FaceEdge;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Centre;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Curved heads against values from outside the project; each test names its source. */
class CheckValuesTest {
  private static JointLine skewback(HeadLayout head) {
    return head.joints().get(head.joints().size() - 1);
  }

  private static double crown(HeadLayout head) {
    return head.curve().places().stream()
        .filter(p -> p.name().equals("crown"))
        .findFirst()
        .orElseThrow()
        .at()
        .y();
  }

  /** A mason's published job, 2010: opening 44⅝, rise 3; he rounds the skewback to 75°. */
  @Test
  void publishedSegmentalJob() {
    JobMaker m = CurvedJobs.of("segmental", 44.625, 8);
    m.first().params.put("rise", Length.inches(3));
    HeadLayout head = CurvedJobs.head(m);
    assertEquals(84.475, CurvedJobs.inches(head.curve().radius()), 0.05);
    JointLine end = skewback(head);
    assertEquals(74.68, Math.toDegrees(end.head().minus(end.foot()).angle()), 0.05);
  }

  /** Worked from the definition: 48 × 6, depth 8, 13 stones, joint ⅜. */
  @Test
  void segmentalWorked() {
    JobMaker m = CurvedJobs.of("segmental", 48, 8);
    CurvedJobs.mortar(m, 0.375);
    m.first().params.put("rise", Length.inches(6));
    m.first().eachSide = 6;
    HeadLayout head = CurvedJobs.head(m);
    Centre c = head.curve().centres().get(0);
    assertEquals(51, CurvedJobs.inches(c.trammel()), 1e-9);
    assertEquals(56.145, Math.toDegrees(c.toAngle() - c.fromAngle()), 0.001);
    assertEquals(13, head.stones().size());
    double pitch = head.curve().around().get(13).distance().mm() - arounds(head, 5);
    assertEquals(3.844, CurvedJobs.inches(pitch), 0.001);
    assertEquals(4.3188, Math.toDegrees(pitch / c.trammel()), 0.0001);
    assertEquals(4.447, CurvedJobs.inches(pitch * 59 / 51), 0.001);
    for (PlacedStone s : head.stones()) {
      Edge soffit = s.edges(FaceEdge.Where.SOFFIT).get(0);
      assertEquals(3.469, CurvedJobs.inches(soffitLength(s)), 0.001, s.mark());
      assertEquals(51, CurvedJobs.inches(((Arc) soffit).radius()), 1e-9);
      double top = s.edges(FaceEdge.Where.TOP).stream().mapToDouble(Edge::length).sum();
      assertEquals(4.072, CurvedJobs.inches(top), 0.001, s.mark());
      // The depth is that of the ring, the chord 2R sin(θ/2 − asin(j/2R)).
      double half = Math.toRadians(56.145) / 26 - Math.asin(0.375 / 102);
      assertEquals(
          102 * Math.sin(half),
          CurvedJobs.inches(s.feet().rightSoffit().minus(s.feet().leftSoffit()).mm())
              / Math.cos(chordAngle(s)),
          1e-4);
    }
  }

  private static double arounds(HeadLayout head, int index) {
    return head.curve().around().stream()
        .filter(a -> a.side() == Side.RIGHT && a.index() == index)
        .findFirst()
        .orElseThrow()
        .distance()
        .mm();
  }

  private static double soffitLength(PlacedStone s) {
    return s.edges(FaceEdge.Where.SOFFIT).stream().mapToDouble(Edge::length).sum();
  }

  private static double chordAngle(PlacedStone s) {
    List<Edge> soffit = s.edges(FaceEdge.Where.SOFFIT);
    return soffit.get(soffit.size() - 1).to().minus(soffit.get(0).from()).angle();
  }

  /** By definition a segmental head that rises half its span is the semicircle. */
  @Test
  void segmentalThatIsASemicircle() {
    JobMaker m = CurvedJobs.of("segmental", 60, 9);
    CurvedJobs.mortar(m, 0.25);
    m.first().params.put("rise", Length.inches(30));
    HeadLayout segmental = CurvedJobs.head(m);
    m.first().shape = "semicircular";
    m.first().params.clear();
    HeadAssert.same(segmental, CurvedJobs.head(m), 1e-9);
  }

  /** By definition: half span 60, rise 40, three equal arcs of 60°. */
  @Test
  void threeCentred() {
    JobMaker m = CurvedJobs.of("three-centred", 120, 12);
    m.first().params.put("rise", Length.inches(40));
    HeadLayout head = CurvedJobs.head(m);
    List<Centre> c = head.curve().centres();
    assertEquals(3, c.size());
    assertEquals(32.679, CurvedJobs.inches(c.get(0).trammel()), 0.0005);
    assertEquals(87.321, CurvedJobs.inches(c.get(2).trammel()), 0.0005);
    for (Centre x : c) {
      assertEquals(60, Math.toDegrees(x.toAngle() - x.fromAngle()), 1e-9);
    }
    assertEquals(40, CurvedJobs.inches(crown(head)), 1e-9);
    HeadAssert.smooth(head.curve().intrados(), 1e-9);
  }

  /** By definition: radius the span, three quarters, one and a half; rise in spans. */
  @ParameterizedTest
  @CsvSource({"1, 0.86603", "0.75, 0.70711", "1.5, 1.11803"})
  void pointed(double ratio, double rise) {
    JobMaker m = CurvedJobs.of("pointed", 100, 10);
    m.first().params.put("radius", ratio);
    HeadLayout head = CurvedJobs.head(m);
    assertEquals(rise * 100, CurvedJobs.inches(crown(head)), 0.0006);
    assertEquals(ratio * 100, CurvedJobs.inches(head.curve().radius()), 1e-9);
  }

  /** By definition: half ellipse 60 × 24. */
  @Test
  void ellipse() {
    Intrados e = new Intrados(List.of(new EllipseRun(60, 24)));
    assertEquals(150, 1 / e.runs().get(0).frame(0).curvature(), 1e-9);
    assertEquals(9.6, 1 / e.runs().get(0).frame(e.length()).curvature(), 1e-9);
    // 138.077 in tables is the short approximation π(3(a + b) − √((3a + b)(a + 3b)))/2, which is
    // 0.0018 under the true half perimeter for these axes; the arithmetic-geometric mean gives it.
    double approximation = Math.PI * (3 * 84 - Math.sqrt(204 * 132)) / 2;
    assertEquals(138.077, approximation, 0.0005);
    assertEquals(138.077, 2 * e.length(), 0.002);
    assertEquals(halfPerimeter(60, 24), 2 * e.length(), 1e-10);
    double lo = 0;
    double hi = e.length();
    for (int i = 0; i < 100; i++) {
      double mid = (lo + hi) / 2;
      if (e.at(mid).x() < 36) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    assertEquals(19.2, e.at(lo).y(), 1e-9);

    JobMaker m = CurvedJobs.of("elliptical", 120, 10);
    m.first().params.put("rise", Length.inches(24));
    HeadLayout head = CurvedJobs.head(m);
    for (JointLine j : head.joints()) {
      Point p = j.foot();
      double a = 60 * 25.4;
      double b = 24 * 25.4;
      assertEquals(1, p.x() * p.x() / (a * a) + p.y() * p.y() / (b * b), 1e-12);
      Vec gradient = new Vec(p.x() / (a * a), p.y() / (b * b)).unit();
      assertEquals(0, gradient.cross(j.head().minus(p).unit()), 1e-9);
    }
  }

  /** The length along slim ellipses against the arithmetic-geometric mean. */
  @ParameterizedTest
  @CsvSource({"100, 10", "10, 100", "2500, 260", "60, 60"})
  void lengthAlongEllipses(double a, double b) {
    double expected = halfPerimeter(a, b);
    assertEquals(expected, 2 * new EllipseRun(a, b).length(), 1e-11 * expected);
  }

  /** The extrados over an ellipse lies at the ring's depth from it, to 0.002 mm. */
  @ParameterizedTest
  @CsvSource({"24, 8", "40, 12", "20, 6"})
  void parallelToTheEllipse(double rise, double depth) {
    JobMaker m = CurvedJobs.of("elliptical", 96, depth);
    m.first().params.put("rise", Length.inches(rise));
    Path extrados = CurvedJobs.head(m).curve().extrados();
    EllipseRun ellipse = new EllipseRun(48 * 25.4, rise * 25.4);
    for (Edge e : extrados.edges()) {
      for (int k = 0; k <= 8; k++) {
        Point p = e.at(k / 8.0);
        double lo = 0;
        double hi = ellipse.length();
        // The foot of the perpendicular: where the curve turns from nearing to leaving the place.
        for (int i = 0; i < 80; i++) {
          double mid = (lo + hi) / 2;
          Run.Frame f = ellipse.frame(mid);
          boolean nearing = new Point(Math.abs(p.x()), p.y()).minus(f.at()).dot(f.along()) > 0;
          lo = nearing ? mid : lo;
          hi = nearing ? hi : mid;
        }
        double distance = new Point(Math.abs(p.x()), p.y()).distance(ellipse.frame(lo).at());
        assertEquals(depth * 25.4, distance, 0.002);
      }
    }
  }

  /** Half the perimeter of an ellipse by the arithmetic-geometric mean (Gauss's method). */
  private static double halfPerimeter(double a, double b) {
    double x = a;
    double y = b;
    double power = 0.5;
    double sum = power * (a * a - b * b);
    while (Math.abs(x - y) > 1e-14 * a) {
      double c = (x - y) / 2;
      double mean = (x + y) / 2;
      y = Math.sqrt(x * y);
      x = mean;
      power *= 2;
      sum += power * c * c;
    }
    return Math.PI / x * (a * a - sum);
  }

  /** From memory of a pattern book: lower centres at the quarter points, upper ones ½ S below. */
  @Test
  void fourCentred() {
    HeadLayout head = CurvedJobs.head(CurvedJobs.of("four-centred", 100, 10));
    List<Centre> c = head.curve().centres();
    assertEquals(4, c.size());
    assertEquals(25, CurvedJobs.inches(c.get(0).trammel()), 1e-9);
    assertEquals(-25, CurvedJobs.inches(c.get(0).at().x()), 1e-9);
    assertEquals(95.711, CurvedJobs.inches(c.get(2).trammel()), 0.0005);
    assertEquals(-50, CurvedJobs.inches(c.get(2).at().y()), 1e-9);
    assertEquals(42.388, CurvedJobs.inches(crown(head)), 0.0005);
  }

  /** The four-centred head found from its rise, or from all three measures, is the same one. */
  @Test
  void fourCentredFromItsRise() {
    HeadLayout first = CurvedJobs.head(CurvedJobs.of("four-centred", 100, 10));
    Length rise = Length.mm(crown(first));
    JobMaker m = CurvedJobs.of("four-centred", 100, 10);
    m.first().params.put("rise", rise);
    HeadAssert.same(first, CurvedJobs.head(m), 1e-6);
    m.first().params.put("haunch-radius", Length.inches(25));
    m.first().params.put("radius", Length.mm(first.curve().centres().get(2).trammel()));
    HeadAssert.same(first, CurvedJobs.head(m), 1e-5);
  }

  /** A head whose centres are given strikes through its own springings, crown and meetings. */
  @ParameterizedTest
  @CsvSource({"segmental", "semicircular", "three-centred", "pointed", "four-centred"})
  void trammelsReachTheCurve(String shape) {
    HeadLayout head = CurvedJobs.head(CurvedJobs.of(shape, 84, 9));
    Path path = head.curve().intrados();
    for (Edge e : path.edges()) {
      Point middle = e.at(0.5);
      assertTrue(
          head.curve().centres().stream()
              .anyMatch(
                  c ->
                      Math.abs(c.at().distance(middle) - c.trammel()) < 1e-9
                          && between(c, middle.minus(c.at()).angle())),
          shape);
    }
  }

  private static boolean between(Centre c, double angle) {
    return angle >= c.fromAngle() && angle <= c.toAngle();
  }
}
