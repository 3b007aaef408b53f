package headcourse.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.geom.Point;
import headcourse.geom.Vec;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomArches;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** What layout.json says of curved heads, read back and held against the curves themselves. */
class ArchOutlinesTest {
  private static final double OFF = 0.05 + 1e-4;

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> list(Object o) {
    return (List<Map<String, Object>>) o;
  }

  @Test
  @SuppressWarnings("unchecked")
  void verticesKeepToTheCurves() {
    Set<String> shapes = new TreeSet<>();
    for (long seed = 1; seed <= 60; seed++) {
      JobMaker m = RandomArches.job(seed);
      Optional<ShopWork> work = WorkUp.of(m.make()).value();
      if (work.isEmpty()) {
        continue;
      }
      shapes.add(m.first().shape);
      Yaml yaml = new Yaml(new SafeConstructor(new LoaderOptions()));
      Map<String, Object> root = yaml.load(LayoutJson.write(work.get()));
      Map<String, Object> opening = list(root.get("openings")).get(0);
      HeadWork head = work.get().heads().get(0);
      String which = "seed " + seed + ", " + m.first().shape;
      radius(which, m.first().shape, head.layout(), (Map<String, Object>) opening.get("head"));
      for (Map<String, Object> stone : list(opening.get("stones"))) {
        String mark = stone.get("mark").toString().substring(m.first().mark.length() + 1);
        PlacedStone placed = head.layout().stone(mark);
        outline(which + " " + mark, placed, (List<List<Number>>) stone.get("outlineMm"));
        // Against the farthest of many points from the line between the corners, not against the
        // solver's own search.
        double said = ((Number) stone.get("chordDeviationMm")).doubleValue();
        assertEquals(farthest(placed), said, 2e-3, which + " " + mark);
      }
    }
    assertEquals(6, shapes.size(), "shapes seen: " + shapes);
  }

  private static void radius(
      String which, String shape, HeadLayout layout, Map<String, Object> head) {
    Object said = head.get("radiusMm");
    List<Edge> edges = layout.curve().intrados().edges();
    Set<Long> radii = new TreeSet<>();
    for (Edge e : edges) {
      if (e instanceof Arc a) {
        radii.add(Math.round(a.radius() * 1000));
      }
    }
    if (said == null) {
      assertTrue(radii.size() != 1 || shape.equals("elliptical"), which + " has one radius");
    } else {
      assertEquals(1, radii.size(), which + " has no single radius: " + radii);
      assertEquals(radii.iterator().next() / 1000.0, ((Number) said).doubleValue(), 1e-3, which);
    }
  }

  // Each vertex lies on the true outline, and the true outline within 0.05 mm of the chords.
  private static void outline(String which, PlacedStone stone, List<List<Number>> vertices) {
    List<Point> v = new ArrayList<>();
    vertices.forEach(p -> v.add(new Point(p.get(0).doubleValue(), p.get(1).doubleValue())));
    double area = 0;
    for (int i = 0; i < v.size(); i++) {
      Point a = v.get(i);
      Point b = v.get((i + 1) % v.size());
      area += a.x() * b.y() - b.x() * a.y();
    }
    assertTrue(area > 0, which + " turns the wrong way");
    for (Edge e : stone.outline().edges()) {
      for (int k = 0; k <= 40; k++) {
        Point on = e.at(k / 40.0);
        double nearest = Double.MAX_VALUE;
        for (int i = 0; i < v.size(); i++) {
          nearest = Math.min(nearest, distance(on, v.get(i), v.get((i + 1) % v.size())));
        }
        assertTrue(nearest <= OFF, which + " is off by " + nearest);
      }
    }
  }

  private static double farthest(PlacedStone stone) {
    List<Edge> soffit = stone.edges(headcourse.layout.FaceEdge.Where.SOFFIT);
    Point from = soffit.get(0).from();
    Vec along = soffit.get(soffit.size() - 1).to().minus(from).unit();
    double most = 0;
    for (Edge e : soffit) {
      for (int k = 0; k <= 500; k++) {
        most = Math.max(most, Math.abs(along.cross(e.at(k / 500.0).minus(from))));
      }
    }
    return most;
  }

  private static double distance(Point p, Point a, Point b) {
    Vec ab = b.minus(a);
    double l = ab.dot(ab);
    double t = l == 0 ? 0 : Math.max(0, Math.min(1, ab.dot(p.minus(a)) / l));
    return p.distance(a.towards(b, t));
  }
}
