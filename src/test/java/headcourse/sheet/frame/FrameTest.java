package headcourse.sheet.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Outcome;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.testing.PageInspector;
import headcourse.text.Face;
import headcourse.text.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Frames on pages of every size. */
class FrameTest {
  private static Frame frame(String body) {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 420 297\">"
            + "<rect id=\"drawing-area\" x=\"20\" y=\"10\" width=\"390\" height=\"260\"/>"
            + body
            + "</svg>";
    Outcome<Frame> o = FrameReader.read("my.svg", svg.getBytes(StandardCharsets.UTF_8));
    return o.value().orElseThrow(() -> new AssertionError(o.diagnostics().toString()));
  }

  private static List<Mark> marks(Frame f, double w, double h, Map<String, String> fields) {
    List<Mark> marks = new ArrayList<>();
    for (Mark m : ((Mark.Group) f.place(w, h, fields).get(0)).marks()) {
      marks.add(m instanceof Mark.Coloured c ? c.mark() : m);
    }
    return marks;
  }

  private static List<String> labels(Frame f, Map<String, String> fields) {
    return marks(f, 420, 297, fields).stream()
        .filter(m -> m instanceof Mark.Label)
        .map(m -> ((Mark.Label) m).lettering().height() + " " + ((Mark.Label) m).text())
        .toList();
  }

  @Test
  void cornersKeepTheirDistanceFromTheirEdges() {
    Frame f =
        frame(
            "<path d=\"M10 20H400V290\" stroke=\"#000\" fill=\"none\"/>"
                + "<circle cx=\"400\" cy=\"20\" r=\"3\"/><text x=\"210\" y=\"148.5\">mid</text>");
    List<Mark> marks = marks(f, 215.9, 279.4, Map.of());
    List<Point> line = ((Mark.Stroke) marks.get(0)).path().vertices(0.1);
    assertPoint(10, 20, line.get(0));
    assertPoint(195.9, 20, line.get(1));
    assertPoint(195.9, 272.4, line.get(2));
    Box circle = ((Mark.Fill) marks.get(1)).path().bounds();
    assertPoint(195.9, 20, circle.centre());
    assertEquals(6, circle.width(), 0.01);
    assertPoint(107.95, 139.7, ((Mark.Label) marks.get(2)).at());
  }

  private static void assertPoint(double x, double y, Point p) {
    assertEquals(x, p.x(), 1e-3);
    assertEquals(y, p.y(), 1e-3);
  }

  @Test
  void longTextShrinksOneStepThenWrapsThenIsCut() {
    String field =
        "<text id=\"field-title\" x=\"30\" y=\"40\" font-size=\"6.859\" data-width=\"40\""
            + " data-lines=\"2\">x</text>";
    Frame f = frame(field);
    assertEquals(List.of("5.0 Mill"), labels(f, Map.of("title", "Mill")));
    assertEquals(
        List.of("3.5 Mill barn, cart"),
        labels(frame(field.replace("\"2\"", "\"1\"")), Map.of("title", "Mill barn, cart")));
    assertEquals(
        List.of("3.5 Mill barn, cart", "3.5 doors, the easte…"),
        labels(f, Map.of("title", "Mill barn, cart doors, the eastern and the western ones")));
    assertEquals(List.of(), labels(f, Map.of()));
    String wide = "W".repeat(500);
    for (String text : List.of(wide, "a b ".repeat(200), "\u0007<&>\"")) {
      for (Mark m : marks(f, 420, 297, Map.of("title", text))) {
        Mark.Label l = (Mark.Label) m;
        assertTrue(Face.REGULAR.width(l.text(), l.lettering().height()) <= 40);
      }
    }
  }

  @Test
  void theFirstLanguageStandsAloneWhereThereIsNoRoom() {
    Frame f =
        frame(
            "<text id=\"field-sheet\" x=\"30\" y=\"40\" data-width=\"20\"/>"
                + "<text id=\"caption-date\" x=\"30\" y=\"50\" data-width=\"40\">Date</text>");
    assertEquals(
        List.of("3.5 1 of 4", "3.5 Date / Fecha"),
        labels(f, Map.of("sheet", "1 of 4 / 1 de 4", "caption-date", "Date / Fecha")));
    assertEquals(List.of("3.5 Date"), labels(f, Map.of()));
  }

  @Test
  void coloursHolesAndTurnedTextSurvive() {
    Frame f =
        frame(
            "<g transform=\"translate(30 30) rotate(-90)\"><text fill=\"rgb(255,0,0)\">up</text></g>"
                + "<path style=\"fill:#0000ff;fill-rule:evenodd\""
                + " d=\"M40 40h20v20h-20z M45 45h10v10h-10z\"/>");
    List<Mark> marks = ((Mark.Group) f.place(420, 297, Map.of()).get(0)).marks();
    Mark.Coloured red = (Mark.Coloured) marks.get(0);
    assertEquals(0xFF0000, red.rgb());
    assertEquals(90, ((Mark.Label) red.mark()).degrees(), 1e-6);
    Path ring = ((Mark.Fill) ((Mark.Coloured) marks.get(1)).mark()).path();
    assertEquals(300, Math.abs(ring.area()), 1e-6);
  }

  @Test
  void arcsInPathsAreTrue() {
    Frame f = frame("<path d=\"M50 40A10 10 0 0 1 30 40a10,10 0 0,1 20,0z\" fill=\"#000\"/>");
    Path circle = ((Mark.Fill) marks(f, 420, 297, Map.of()).get(0)).path();
    for (Point p : circle.vertices(0.001)) {
      assertEquals(10, p.distance(new Point(40, 40)), 1e-3);
    }
  }

  static Stream<Arguments> papers() {
    return Stream.of("plain", "notes")
        .flatMap(
            t ->
                PaperSizes.all().stream()
                    .flatMap(p -> Stream.of(Arguments.of(t, p, false), Arguments.of(t, p, true))));
  }

  /** Everything stays within what a printer can print, and no text of a frame meets another. */
  @ParameterizedTest
  @MethodSource("papers")
  void templatesSuitThePaper(String template, Paper paper, boolean lying) throws Exception {
    double a = paper.width().mm();
    double b = paper.height().mm();
    double w = lying ? b : a;
    double h = lying ? a : b;
    if (template.equals("notes") && (w < 400 || h < 279)) {
      return;
    }
    Outcome<Frame> o =
        FrameReader.read(
            template, Files.readAllBytes(java.nio.file.Path.of("templates/" + template + ".svg")));
    assertEquals(List.of(), o.diagnostics());
    Frame f = o.value().orElseThrow();
    assertTrue(f.fits(w, h));
    Map<String, String> fields = new HashMap<>();
    for (String name : FieldNames.ALL) {
      fields.put("caption-" + name, Words.of("en+es").say("frame." + name));
      fields.put(name, "Words enough to fill whatever room there is, and then more of them");
      fields.put("caption-" + name, Words.of("en+es").say("frame." + name));
    }
    Box printable = new Box(6.35, 6.35, w - 6.35, h - 6.35);
    Box room = f.area(w, h);
    List<Box> texts = new ArrayList<>();
    for (Mark m : marks(f, w, h, fields)) {
      if (m instanceof Mark.Label l) {
        double size = l.lettering().height();
        double width = Face.of(l.lettering().bold()).width(l.text(), size);
        double from = l.align() == Mark.Align.END ? -width : 0;
        Box box =
            new Box(l.at().x() + from, l.at().y() - size, l.at().x() + from + width, l.at().y());
        assertFalse(box.overlaps(room), l.text());
        texts.forEach(t -> assertFalse(t.overlaps(box), l + " over " + t));
        texts.add(box);
        assertTrue(printable.contains(box), l.toString());
        assertTrue(size >= 2.5, l.toString());
      } else if (m instanceof Mark.Stroke s) {
        assertTrue(printable.contains(s.path().bounds()), s.toString());
      }
    }
    assertTrue(texts.size() > 20);
  }

  @Test
  void aPageTooSmallIsRefused() {
    assertFalse(Frame.plain().fits(60, 60));
    assertThrows(IllegalArgumentException.class, () -> Frame.plain().area(20, 20));
  }

  @Test
  void binderMarginIsForIsoPaperOnly() {
    // ISO 5457: 20 mm at the left, 10 mm elsewhere (from memory).
    assertEquals(22, Frame.plain().area(210, 297).minX(), 1e-9);
    assertEquals(12, Frame.plain().area(215.9, 279.4).minX(), 1e-9);
  }

  /** Nothing of a job is cut short in the title block, on any paper, in any language. */
  @Test
  void longNamesWrapInsteadOfBeingCut() {
    Map<String, String> fields = new TreeMap<>();
    fields.put(
        "title", "Coach house behind the old brewery, east and west carriage arches, wicket");
    fields.put("owner", "Hollow Ash Masonry and Stone Setting");
    fields.put("site", "114 Lower Brewery Lane, Upper Netherfield");
    fields.put("drawn-by", "Theodora Ashcombe-Whitfield");
    fields.put("number", "26-099-EAST-B");
    fields.put("date", "2026-05-04");
    fields.put("revision", "AA");
    fields.put("sheet", "112 / 117");
    fields.put("piece", "W1-strip-12");
    for (String name : List.of("title", "owner", "site", "drawn-by", "number", "revision")) {
      fields.put("caption-" + name, Words.of("en+es").say("frame." + name));
    }
    for (double[] paper : new double[][] {{215.9, 279.4}, {279.4, 215.9}, {297, 420}}) {
      List<Mark> marks = Frame.plain().place(paper[0], paper[1], fields);
      StringBuilder said = new StringBuilder();
      for (Mark m : ((Mark.Group) marks.get(0)).marks()) {
        if (m instanceof Mark.Label l) {
          assertFalse(l.text().contains("…"), l.text());
          assertTrue(l.lettering().height() >= 2.5 - 1e-9, l.text());
          said.append(l.text()).append(' ');
        }
      }
      for (String word :
          "brewery wicket Hollow Setting Netherfield Whitfield EAST-B 117".split(" ")) {
        assertTrue(said.toString().contains(word), word + ": " + said);
      }
      assertEquals(
          List.of(),
          PageInspector.faults(new Page(paper[0], paper[1], "x", "x", marks, List.of())));
    }
  }
}
