package headcourse.sheet.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.drawing.Mark;
import headcourse.geom.Point;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a frame file may hold, and what is refused, where and why. */
class FrameReaderTest {
  private static final String HEAD =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
          + " viewBox=\"0 0 420 297\">\n";
  private static final String AREA =
      "<rect id=\"drawing-area\" x=\"20\" y=\"10\" width=\"390\" height=\"260\" fill=\"none\"/>\n";

  private static String file(String body) {
    return HEAD + AREA + body + "\n</svg>";
  }

  private static Outcome<Frame> read(String svg) {
    return FrameReader.read("my.svg", svg.getBytes(StandardCharsets.UTF_8));
  }

  static Stream<Arguments> hostile() {
    String g = "<g>";
    return Stream.of(
        Arguments.of("script", file("<script>alert(1)</script>"), "a script is refused", "3:1"),
        Arguments.of(
            "script in another vocabulary",
            file("<h:script xmlns:h=\"http://www.w3.org/1999/xhtml\">x</h:script>"),
            "a script is refused",
            "3:1"),
        Arguments.of(
            "script hidden in defs",
            file("<defs>\n <g><script/></g></defs>"),
            "a script is refused",
            "4:5"),
        Arguments.of("event", file("<g  onload=\"x()\"/>"), "attribute onload", "3:5"),
        Arguments.of("event in capitals", file("<g ONCLICK=\"x()\"/>"), "attribute ONCLICK", "3:4"),
        Arguments.of(
            "link out",
            file("<image width=\"9\" height=\"9\" xlink:href=\"http://a.example/x.png\"/>"),
            "a reference out of the file is refused: http://a.example/x.png",
            "3:29"),
        Arguments.of(
            "file link",
            file("<image width=\"9\" height=\"9\" href=\"file:///etc/passwd\"/>"),
            "a reference out of the file",
            "3:29"),
        Arguments.of(
            "url out",
            file("<g style=\"fill:URL( http://a.example/)\"/>"),
            "out of the file",
            "3:4"),
        Arguments.of(
            "document type",
            "<?xml version=\"1.0\"?>\n<!DOCTYPE svg SYSTEM \"file:///etc/passwd\">\n" + file(""),
            "a document type is refused",
            "2:1"),
        Arguments.of(
            "entity bomb",
            "<!DOCTYPE svg [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>"
                + file("<text>&b;</text>"),
            "a document type is refused",
            "1:1"),
        Arguments.of("entity", file("<text>&b;</text>"), "", "3:7"),
        Arguments.of(
            "use", file("<g id=\"a\"><use xlink:href=\"#a\"/></g>"), "<use> is refused", "3:11"),
        Arguments.of("style sheet", file("<style>g{}</style>"), "a style sheet is not read", "3:1"),
        Arguments.of(
            "unknown element", file("<foreignObject/>"), "<foreignObject> is not drawn", "3:1"),
        Arguments.of(
            "depth", file(g.repeat(40) + "</g>".repeat(40)), "nested deeper than 32", "3:94"),
        Arguments.of("count", file("<g/>".repeat(5001)), "more than 5000 elements", "3:19993"),
        Arguments.of(
            "size", file("<!--" + "x".repeat(600000) + "-->"), "larger than 512 KiB", "1:1"),
        Arguments.of("no area", HEAD + "</svg>", "the drawing area is missing", "1:1"),
        Arguments.of(
            "no view box", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", "no viewBox", "1:1"),
        Arguments.of("other root", "<html/>", "not an SVG file", "1:1"),
        Arguments.of(
            "other encoding",
            "<?xml version='1.0' encoding='UTF-16'?>" + file(""),
            "not in UTF-8",
            "1:1"),
        Arguments.of("crossed", file("<g><text></g></text>"), "<text> is not closed", "3:12"),
        Arguments.of("twice", file("<g id='a' id='b'/>"), "id stands twice", "3:11"),
        Arguments.of("prefix", file("<x:g/>"), "the prefix x is not declared", "3:1"),
        Arguments.of("control", file("<text>\u0001</text>"), "a control character", "3:7"),
        Arguments.of(
            "no such character", file("<text>&#xD800;</text>"), "no such character", "3:7"),
        Arguments.of("after the end", file("") + "<g/>", "something after the end", "4:7"),
        Arguments.of("tag in a value", file("<g id=\"<\"/>"), "< within a value", "3:8"),
        Arguments.of("no quotes", file("<g id=a/>"), "expected a value in quotes", "3:7"),
        Arguments.of("open comment", file("<!-- a -- b -->"), "a comment", "3:5"),
        Arguments.of("empty", "", "not well-formed", "1:1"),
        Arguments.of("cut off", HEAD + "<g>", "not well-formed", "2:4"),
        Arguments.of("binary", "\u0000\u0001", "not well-formed", "1:1"),
        Arguments.of(
            "huge number", file("<line x1=\"1e300\"/>"), "not a number up to 10000: 1e300", "3:7"),
        Arguments.of("no number", file("<line x1=\"NaN\"/>"), "not a number", "3:7"),
        Arguments.of("hexadecimal", file("<line x1=\"0x1p9\"/>"), "not a number", "3:7"),
        Arguments.of("bad path", file("<path d=\"M 0 0 L x\"/>"), "not a path", "3:7"),
        Arguments.of(
            "huge path", file("<path d=\"M 0 0 L 1e30 0\"/>"), "larger than any page", "3:1"),
        Arguments.of(
            "far out",
            file("<line x2=\"9000\" transform=\"scale(9)\"/>"),
            "larger than any page",
            "3:1"),
        Arguments.of("bad transform", file("<g transform=\"fly(1)\"/>"), "not a transform", "3:4"),
        Arguments.of(
            "transform to infinity",
            file(
                "<g transform=\"scale(1e30)\"><g transform=\"scale(1e30)\"><line x2=\"9000\"/></g></g>"),
            "not a transform",
            "3:4"),
        Arguments.of("bad colour", file("<g fill=\"blurple\"/>"), "not a colour: blurple", "3:4"),
        Arguments.of(
            "unknown field",
            file("<text id=\"field-tilte\" x=\"1\" y=\"1\"/>"),
            "no field is called tilte",
            "3:7"),
        Arguments.of(
            "picture that is none",
            file("<image width=\"9\" height=\"9\" href=\"data:image/png;base64,AAAA\"/>"),
            "a picture that ends too soon",
            "3:29"),
        Arguments.of(
            "picture of another type",
            file("<image width=\"9\" height=\"9\" href=\"data:image/svg+xml;base64,AAAA\"/>"),
            "a picture must be",
            "3:29"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("hostile")
  void refused(String name, String svg, String reason, String place) {
    Outcome<Frame> outcome = assertTimeoutPreemptively(Duration.ofSeconds(5), () -> read(svg));
    assertTrue(outcome.value().isEmpty(), name);
    Diagnostic first = outcome.diagnostics().get(0);
    assertTrue(first.message().contains(reason), first.message());
    assertEquals("my.svg:" + place, first.span().place(), first.message());
  }

  @Test
  void referencesAndSectionsAreRead() {
    String text = "<text x='1' y='9'>&lt;a&gt; &amp;&#38;&#x26; <![CDATA[<b> & ]]>\n c</text>";
    Frame f =
        read("\uFEFF<?xml version='1.0' encoding='utf-8'?><!-- a -->" + file(text))
            .value()
            .orElseThrow();
    Mark.Group g = (Mark.Group) f.place(420, 297, Map.of()).get(0);
    assertEquals("<a> &&& <b> & c", ((Mark.Label) g.marks().get(0)).text());
  }

  /** Where SVG 1.1, 7.6, has each transform take the place (3, 2), in a file of one unit a mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "translate(4);            7;   2",
        "translate(4 5);          7;   7",
        "scale(2);                6;   4",
        "scale(2 3);              6;   6",
        "rotate(90);             -2;   3",
        "rotate(90 3 2);          3;   2",
        "skewX(45);               5;   2",
        "skewY(45);               3;   5",
        "matrix(1 2 3 4 5 6);    14;  20",
        "translate(1 0) scale(2); 7;   4"
      })
  void transformsAreThoseOfTheStandard(String transform, double x, double y) {
    double[] from = at("");
    double[] to = at(transform);
    assertEquals(x - 3, to[0] - from[0], 1e-5, transform);
    assertEquals(y - 2, to[1] - from[1], 1e-5, transform);
  }

  private static double[] at(String transform) {
    String body =
        "<line stroke='black' x1='3' y1='2' x2='30' y2='40' transform='" + transform + "'/>";
    Frame f = read(file(body)).value().orElseThrow();
    Mark.Group g = (Mark.Group) f.place(420, 297, Map.of()).get(0);
    Point p = ((Mark.Stroke) g.marks().get(0)).path().edges().get(0).from();
    return new double[] {p.x(), p.y()};
  }

  @Test
  void unknownFieldNamesTheNearest() {
    Diagnostic d = read(file("<text id=\"field-tilte\"/>")).diagnostics().get(0);
    assertEquals(List.of("did you mean field-title?"), d.hints());
  }

  @Test
  void everyProblemIsTold() {
    Outcome<Frame> o = read(file("<g fill=\"blurple\"/><line x1=\"NaN\"/><use/>"));
    assertEquals(3, o.diagnostics().size());
  }

  @Test
  void drawingProgramsLeavingsAreHarmless() {
    String body =
        "<metadata><r:RDF xmlns:r=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"/></metadata>"
            + "<defs id=\"d\"><linearGradient id=\"l\"/></defs>"
            + "<x:view xmlns:x=\"http://a.example/x\" x:zoom=\"2\"><x:y/></x:view>"
            + "<text x=\"30\" y=\"40\"><tspan x=\"30\" y=\"40\">one</tspan>"
            + "<tspan x=\"30\" y=\"50\">two</tspan></text>";
    Outcome<Frame> o = read(file(body));
    assertEquals(List.of(), o.diagnostics());
    assertEquals(1, o.value().orElseThrow().place(420, 297, Map.of()).size());
  }

  /** Files with bytes knocked out: an answer always, an exception never. */
  @Test
  void damagedFilesAreRefusedOrRead() throws Exception {
    byte[] good = java.nio.file.Files.readAllBytes(java.nio.file.Path.of("templates/notes.svg"));
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      byte[] bad = good.clone();
      for (int i = 0; i < 1 + seed % 7; i++) {
        bad[random.nextInt(bad.length)] = (byte) random.nextInt(256);
      }
      try {
        Outcome<Frame> o = FrameReader.read("my.svg", bad);
        assertTrue(o.value().isPresent() || !o.diagnostics().isEmpty(), "seed " + seed);
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed, e);
      }
    }
  }
}
