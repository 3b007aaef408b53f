package headcourse.sheet.bench;

import static headcourse.testing.StockItems.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.export.LayoutJson;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.Stock;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.stock.StockPlan;
import headcourse.testing.JobMaker;
import headcourse.testing.Tape;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * The V under the keys of pointed and four-centred heads: depths from formulae of the test's own,
 * masses from areas of an independent library, figures as they stand on the finished sheets.
 */
class KeyVTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  private static JobMaker maker(String shape, double width, double key) {
    JobMaker m = JobMaker.one();
    JobMaker.OpeningMaker o = m.first();
    o.shape = shape;
    o.width = Length.inches(width);
    o.headHeight = Length.inches(10);
    o.target = Length.inches(7);
    o.min = Length.inches(3);
    o.max = Length.inches(12);
    o.wallLeft = o.wallRight = Length.inches(60);
    o.key = new HeadSpec.Key(Length.inches(key), null, Length.ZERO, Length.ZERO, Length.ZERO);
    return m;
  }

  private static ShopWork work(JobMaker m) {
    return WorkUp.of(m.make()).value().orElseThrow();
  }

  private static Piece key(ShopWork work) {
    return work.heads().get(0).piece("K");
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> json(ShopWork work) {
    Map<String, Object> root =
        new Yaml(new SafeConstructor(new LoaderOptions())).load(LayoutJson.write(work));
    var opening = ((List<Map<String, Object>>) root.get("openings")).get(0);
    return ((List<Map<String, Object>>) opening.get("stones"))
        .stream().filter(s -> s.get("role").equals("key")).findFirst().orElseThrow();
  }

  private static double number(Map<String, Object> of, String key) {
    return ((Number) of.get(key)).doubleValue();
  }

  @SuppressWarnings("unchecked")
  private static Geometry outline(Map<String, Object> stone) {
    List<Coordinate> c = new ArrayList<>();
    for (List<Number> p : (List<List<Number>>) stone.get("outlineMm")) {
      c.add(new Coordinate(p.get(0).doubleValue(), p.get(1).doubleValue()));
    }
    c.add(c.get(0).copy());
    return JTS.createPolygon(c.toArray(new Coordinate[0]));
  }

  private static List<String> labels(ShopWork work, Bundle bundle) {
    List<String> labels = new ArrayList<>();
    for (Page page : SheetBook.compose(work, bundle, Frame.plain()).pages()) {
      collect(page.marks(), labels);
    }
    return labels;
  }

  private static void collect(List<Mark> marks, List<String> labels) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group g) {
        collect(g.marks(), labels);
      } else if (mark instanceof Mark.Label l) {
        labels.add(Tape.raised(l.text()));
      }
    }
  }

  /**
   * Two arcs of radius kW about the springing line: the apex stands √(R² − (R − H)²) high, a corner
   * at ± b/2 stands √(R² − (R − H + b/2)²). At 48 in, lancet, with a key of 4.2 in: 49.6 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "lancet, 1.5, 48, 4.2, 49.657",
    "lancet, 1.5, 48, 8, 98.197",
    "equilateral, 1, 42, 6, 48.405",
    "drop, 0.75, 60, 5, 24.602"
  })
  void depthOfAPointedKey(String point, double k, double width, double b, double hand) {
    double radius = k * width * 25.4;
    double foot = radius - width * 25.4 / 2;
    double corner = foot + b * 25.4 / 2;
    double depth =
        Math.sqrt(radius * radius - foot * foot) - Math.sqrt(radius * radius - corner * corner);
    assertEquals(hand, depth, 0.001, "the formula against the figure worked on a calculator");
    JobMaker m = maker("pointed", width, b);
    m.first().params.put("point", point);
    holds(m, depth);
  }

  /**
   * The common setting-out: haunches of S/4, crown arcs of (1/4 + 1/√2) S about places S/4 beside
   * the centre line, so that their centres lie S/2 below the springing line.
   */
  @ParameterizedTest
  @CsvSource({"72, 8, 30.829", "96, 6, 22.016"})
  void depthOfAFourCentredKey(double span, double b, double hand) {
    double s = span * 25.4;
    double radius = (0.25 + Math.sqrt(0.5)) * s;
    double apex = Math.sqrt(radius * radius - s * s / 16);
    double x = s / 4 + b * 25.4 / 2;
    double depth = apex - Math.sqrt(radius * radius - x * x);
    assertEquals(hand, depth, 0.001, "the formula against the figure worked on a calculator");
    holds(maker("four-centred", span, b), depth);
  }

  private static void holds(JobMaker m, double depth) {
    ShopWork work = work(m);
    Map<String, Object> key = json(work);
    assertEquals(depth, number(key, "vDepthMm"), 0.001);
    // The soffit stands off the straight line between its corners by the V and by nothing more.
    assertEquals(depth, number(key, "chordDeviationMm"), 0.001);
    Geometry face = outline(key);
    double area = face.getArea();
    assertEquals(area / 1e6, number(key, "areaM2"), 2e-4);
    double t = number(key, "thicknessMm");
    double s = number(key, "returnMm");
    double low = face.getEnvelopeInternal().getMinY();
    Envelope strip = new Envelope(-1e4, 1e4, low, low + t);
    double under = s > t ? face.intersection(JTS.toGeometry(strip)).getArea() : 0;
    double kg = (t * area + Math.max(0, s - t) * under) / 1e9 * m.density;
    assertEquals(kg, number(key, "massKg"), kg * 0.003);
    // 3/8 in of the return over the apex, or no corner.
    boolean corner = t - depth >= 9.525;
    assertEquals(corner, s > 0, "return of a V " + depth + " deep");
    assertEquals(corner, key(work).soffitPieces().isEmpty());
    sheets(work, m, depth, corner);
  }

  private static void sheets(ShopWork work, JobMaker m, double depth, boolean corner) {
    LengthFormat f = new LengthFormat(m.units, work.job().grid());
    String size = f.withUnit(Length.mm(depth));
    List<String> bench = labels(work, Bundle.BENCH);
    String all = String.join(" ", bench);
    assertTrue(all.contains("V " + size + " deep on the centre line"), "words on the ticket");
    assertTrue(bench.contains(f.tape(Length.mm(depth))), "dimension on the ticket");
    assertEquals(!corner, all.contains("NO CORNER HOLDS IT"));
    assertEquals(!corner, all.contains("soffit pieces"));
    assertEquals(
        !corner, work.findings().stream().anyMatch(x -> x.rule().equals("key-v")), "finding");
    String full = String.join(" ", labels(work, Bundle.FULL_SIZE));
    assertTrue(full.contains("V " + size + " deep on the centre line"), "full-size outline");
    if (!corner) {
      SoffitPiece flank = key(work).soffitPieces().get(0);
      assertTrue(bench.contains(f.tape(flank.underside())), "length of a flank");
      assertTrue(bench.contains(f.tape(flank.depth())), "depth of a flank");
    }
  }

  /** Each flank of an equilateral key by hand: 42 in, key 6 in, reveal 4 in, stone 1¼ in. */
  @Test
  void soffitPiecesLieAlongTheFlanks() {
    ShopWork work = work(maker("pointed", 42, 6));
    Piece key = key(work);
    assertEquals(2, key.soffitPieces().size());
    SoffitPiece left = key.soffitPieces().get(0);
    SoffitPiece right = key.soffitPieces().get(1);
    assertEquals("D1-K-SL", left.mark());
    assertEquals("D1-K-SR", right.mark());
    // Chord √(76.2² + 48.405²) = 90.274; depth 4 − 1¼ = 2¾ in.
    assertEquals(90.274, left.underside().mm(), 0.02);
    assertEquals(2.75, left.depth().mm() / 25.4, 1e-9);
    // The flanks climb at atan(48.405/76.2) = 32.425°; cut plumb on the centre line they end so far
    // off square, long above.
    assertEquals(32.425, left.right().offSquare().degrees(), 0.02);
    assertEquals(headcourse.bench.Rake.LongPoint.TOP, left.right().longPoint());
    assertEquals(left.underside().mm(), right.underside().mm(), 1e-6);
    assertEquals(left.massKg(), right.massKg(), 1e-9);
    assertEquals(32.425, right.left().offSquare().degrees(), 0.02);
  }

  @Test
  void theFaceComesFromAFlatAndTheSoffitFromTwo() {
    JobMaker m = maker("pointed", 42, 6);
    m.stock = new Stock(List.of(flat("F1", 36, 24, 4)), 0.1);
    ShopWork work = work(m);
    List<StockPlan.Part> parts = new ArrayList<>();
    for (StockPlan.CutBlank b : work.stock().blanks()) {
      for (StockPlan.Cut cut : b.cuts()) {
        if (cut.stone().equals("D1-K")) {
          parts.add(cut.part());
        }
      }
    }
    parts.sort(null);
    assertEquals(List.of(StockPlan.Part.FACE, StockPlan.Part.SOFFIT, StockPlan.Part.SOFFIT), parts);
    assertFalse(
        work.findings().stream()
            .anyMatch(f -> f.rule().equals("no-blank") && "D1-K".equals(f.stone())));
  }
}
