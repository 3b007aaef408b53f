package headcourse.sheet.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.layout.JointLine;
import headcourse.layout.Side;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.statics.Joint;
import headcourse.statics.Standing;
import headcourse.statics.Yield;
import headcourse.statics.Yield.How;
import headcourse.testing.DemoJobs;
import headcourse.testing.JobYaml;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reads the figure back from the finished pages. */
class SolidFigureTest {
  /** How far off a joint a place may be printed, mm on paper. */
  private static final double OFF = 0.05;

  private static ShopWork work(String name) throws IOException {
    return DemoJobs.work(name);
  }

  private static List<Mark.Group> figures(ShopWork work, Bundle bundle, String mark) {
    List<Mark.Group> found = new ArrayList<>();
    for (Page page : SheetBook.compose(work, bundle, Frame.plain()).pages()) {
      groups(page.marks(), "solid-" + mark, found);
    }
    return found;
  }

  private static void groups(List<Mark> marks, String id, List<Mark.Group> found) {
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        if (g.id().equals(id)) {
          found.add(g);
        }
        groups(g.marks(), id, found);
      }
    }
  }

  private static List<Mark.Stroke> strokes(Mark.Group g, Pen pen) {
    return g.marks().stream()
        .filter(m -> m instanceof Mark.Stroke s && s.pen().equals(pen))
        .map(m -> (Mark.Stroke) m)
        .toList();
  }

  /** From paper to the model, by the boxes of what is drawn: stones left to right. */
  private record Back(double scale, double x, double y) {
    static Back of(Mark.Group g, HeadWork head) {
      List<Mark.Stroke> stones = strokes(g, Pen.FINE);
      assertEquals(head.layout().stones().size(), stones.size());
      Box drawn = box(stones.stream().map(s -> s.path().bounds()).toList());
      Box real = box(head.layout().stones().stream().map(s -> s.outline().bounds()).toList());
      double scale = drawn.width() / real.width();
      assertEquals(scale, drawn.height() / real.height(), 1e-3 * scale);
      // Each stone where it belongs, so that left and right, up and down are not exchanged.
      Back back =
          new Back(scale, drawn.minX() - real.minX() * scale, drawn.maxY() + real.minY() * scale);
      for (int i = 0; i < stones.size(); i++) {
        Box own = head.layout().stones().get(i).outline().bounds();
        Point at = back.model(stones.get(i).path().bounds().centre());
        assertEquals(0, at.distance(own.centre()), OFF / scale);
      }
      return back;
    }

    private static Box box(List<Box> all) {
      return all.stream().reduce(Box::union).orElseThrow();
    }

    Point model(Point p) {
      return new Point((p.x() - x) / scale, (y - p.y()) / scale);
    }
  }

  private static double off(Point p, Point a, Point b) {
    double length = a.distance(b);
    double t = length < 1e-6 ? 0 : p.minus(a).dot(b.minus(a)) / (length * length);
    return p.distance(a.towards(b, Math.max(0, Math.min(1, t))));
  }

  /** From the thrust line on paper to the nearest joint, or to the seats on the jambs. */
  private static void lineLiesInTheJoints(Mark.Group g, HeadWork head) {
    Back back = Back.of(g, head);
    Standing standing = head.asSolid().standing();
    List<Mark.Stroke> heavy = new ArrayList<>(strokes(g, Pen.CUT));
    long slides = standing.yields().stream().filter(y -> y.how() == How.SLIDE).count();
    assertEquals(1 + 2 * slides, heavy.size());
    yieldsStandWhereTheyDo(g, back, standing, heavy.subList(1, heavy.size()));
    List<Mark.Stroke> jambs = strokes(g, Pen.DIMENSION);
    assertEquals(2, jambs.size());
    for (int i = 0; i < 2; i++) {
      Side side = List.of(Side.LEFT, Side.RIGHT).get(i);
      Box jamb = jambs.get(i).path().bounds();
      Point top = back.model(new Point(jamb.minX(), jamb.minY()));
      assertEquals(side.sign() * head.layout().jamb(side).mm(), top.x(), OFF / back.scale());
      assertEquals(0, top.y(), OFF / back.scale());
      assertTrue(jamb.height() > 1 && jamb.width() < OFF, "a jamb is plumb, below its springing");
    }
    List<Point> line = heavy.get(0).path().vertices(OFF);
    assertEquals(head.asSolid().standing().line().size(), line.size());
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < line.size(); i++) {
      Point p = back.model(line.get(i));
      assertTrue(p.x() > last, "from left to right");
      last = p.x();
      double near = Double.MAX_VALUE;
      for (JointLine j : head.layout().joints()) {
        near = Math.min(near, off(p, j.foot(), j.head()));
      }
      if (!head.layout().curved()) {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
          Point jamb = new Point(side.sign() * head.layout().jamb(side).mm(), 0);
          Point foot =
              head.layout().joints().stream()
                  .filter(j -> j.side() == side && j.outer().isEmpty())
                  .findFirst()
                  .orElseThrow()
                  .foot();
          near = Math.min(near, off(p, jamb, foot));
        }
      }
      assertTrue(near * back.scale() < OFF, "place " + i + " is " + near + " mm off every joint");
    }
    assertTrue(back.model(line.get(line.size() / 2)).y() > back.model(line.get(0)).y());
  }

  /**
   * Rings at the ends of joints that hinge, at the foot or the head; bars along those that slide.
   */
  private static void yieldsStandWhereTheyDo(
      Mark.Group g, Back back, Standing standing, List<Mark.Stroke> bars) {
    List<Mark.Stroke> rings = new ArrayList<>(strokes(g, Pen.EDGE));
    List<Mark.Stroke> left = new ArrayList<>(bars);
    for (Yield y : standing.yields()) {
      Joint joint = standing.joints().get(y.joint());
      if (y.how() == How.SLIDE) {
        for (int k = 0; k < 2; k++) {
          Box bar = left.remove(0).path().bounds();
          Point middle = joint.foot().towards(joint.head(), 0.5);
          assertTrue(back.model(bar.centre()).distance(middle) * back.scale() < 1, "bars");
        }
      } else {
        Point at = y.how() == How.HINGE_FOOT ? joint.foot() : joint.head();
        Point ring = back.model(rings.remove(0).path().bounds().centre());
        assertEquals(0, ring.distance(at), OFF / back.scale(), "" + y);
      }
    }
    assertTrue(rings.isEmpty() && left.isEmpty());
  }

  private static void once(ShopWork work) {
    for (Bundle bundle : List.of(Bundle.CONTRACTOR, Bundle.WALL)) {
      for (HeadWork head : work.heads()) {
        List<Mark.Group> all = figures(work, bundle, head.layout().opening().mark());
        assertEquals(1, all.size(), bundle + " " + head.layout().opening().mark());
        lineLiesInTheJoints(all.get(0), head);
      }
    }
  }

  static List<String> demos() throws IOException {
    return DemoJobs.names();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void everyHeadOfTheDemos(String name) throws IOException {
    once(work(name));
  }

  /** Wide and thin, high and narrow, on paper that hardly holds them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "letter; 34'; shape: soldier, height: 8, stones: {min: 5, max: 9, target: 7}",
        "letter; 3'; shape: pointed, height: 8, stones: {min: 3, max: 9, target: 6}",
        "a4; 9'; shape: semicircular, height: 22, stones: {min: 3, max: 16, target: 9}",
        "a4; 5'; shape: jack, height: 20, skewback: 60, stones: {min: 2, max: 5, target: 3}"
      })
  void everyHeadHasItsFigure(String given) {
    String[] part = given.split("; ");
    Job job =
        JobYaml.job(
            """
            units: in
            grid: 1/16
            paper: %s
            language: en+es
            stone: {kind: sandstone, density: 140 lb/ft3, thickness: 1 1/4}
            openings:
              - {mark: D1, width: %s, reveal: 4, head: {%s}}
            """
                .formatted(part[0], part[1], part[2]));
    once(WorkUp.of(job).value().orElseThrow());
  }

  private static String words(ShopWork work, Bundle bundle) {
    List<String> all = new ArrayList<>();
    for (Page page : SheetBook.compose(work, bundle, Frame.plain()).pages()) {
      labels(page.marks(), all);
    }
    return String.join(" ", all);
  }

  private static void labels(List<Mark> marks, List<String> all) {
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        labels(g.marks(), all);
      } else if (m instanceof Mark.Label l) {
        all.add(l.text());
      }
    }
  }

  /** 1.36 is depth over least, never more than it is; thrusts are never less. */
  @Test
  void figuresOfTheCartDoor() throws IOException {
    ShopWork work = work("cart-door");
    Standing s = work.heads().get(0).asSolid().standing();
    assertEquals(Standing.Verdict.STANDS, s.verdict());
    assertTrue(s.margin() >= 1.36 && s.margin() < 1.37, "" + s.margin());
    assertTrue(s.thrust() > 1.81 && s.thrust() <= 1.82, "" + s.thrust());
    for (Bundle bundle : List.of(Bundle.WALL, Bundle.CONTRACTOR)) {
      String text = words(work, bundle);
      assertTrue(text.contains("Solid, it would stand: 1.36 times as deep as it must be"), text);
      assertTrue(text.contains("pushing sideways with 1.82 times its weight (2.5 allowed)"), text);
      assertTrue(text.contains("the veneer carries nothing, the lintel by others does"), text);
      assertTrue(text.contains("no structural design"), text);
    }
    assertTrue(
        words(work, Bundle.CONTRACTOR).contains("Least thrust that keeps it up: 1.82 times"));
    // 354.9 kg are 782.4 lb as thick as 4 in of soffit; 1.8188 times that are 1423.
    String contractor = words(work, Bundle.CONTRACTOR);
    assertTrue(contractor.contains("would have to take 1424 lb sideways"), contractor);
    assertTrue(contractor.contains("the head weighs 783 lb"), contractor);
    // A pier 94.392 in wide, upwards to a sixteenth.
    assertEquals(94.392, s.pier() / 25.4, 5e-4);
    assertTrue(contractor.contains("makes it look, 4\"); a pier of the same stone"), contractor);
    assertTrue(contractor.contains("would have to be 94 7/16\" wide"), contractor);
    assertTrue(s.pier() > 101.6 + 1, "the pier's width can be told from the reveal");
    assertTrue(s.greatest() > s.thrust() + 0.01);
  }

  /**
   * Hinges by name, as in the model: foot at the soffit, head at the back, stones left to right.
   */
  @Test
  void whatGivesWayIsNamed() throws IOException {
    ShopWork work = work("chapel-arches");
    String text = words(work, Bundle.CONTRACTOR);
    Standing s = work.heads().get(1).asSolid().standing();
    List<String> feet = new ArrayList<>();
    for (int joint = 1; joint < s.joints().size() - 1; joint++) {
      for (Yield y : s.yields()) {
        if (y.joint() == joint && y.how() == How.HINGE_FOOT) {
          feet.add(
              work.heads().get(1).layout().stones().get(joint - 1).mark()
                  + "/"
                  + work.heads().get(1).layout().stones().get(joint).mark());
        }
      }
    }
    assertTrue(feet.size() >= 2, feet.toString());
    assertTrue(text.contains("It hinges at the soffit between " + String.join(", ", feet)), text);
  }

  /** What the sheet says of a cure is what was tried. */
  @Test
  void curesInWords() {
    Job job =
        JobYaml.job(
            """
            units: in
            grid: 1/16
            language: en+es
            stone: {kind: sandstone, density: 140 lb/ft3, thickness: 1 1/4}
            openings:
              - mark: D1
                width: 18'
                reveal: 4
                head: {shape: soldier, height: 8, stones: {min: 5, max: 9, target: 7}}
            """);
    ShopWork work = WorkUp.of(job).value().orElseThrow();
    String text = words(work, Bundle.CONTRACTOR);
    String value = work.heads().get(0).asSolid().cures().get(0).get(0).value();
    assertEquals("9 7/8", value);
    assertTrue(text.contains("Tried, and each cures it: a depth of 9 7/8\""), text);
    assertTrue(text.contains("Probado, y cada uno lo remedia: un canto de 9 7/8\""), text);
    assertTrue(text.contains("ends that bear at least"), text);
  }
}
