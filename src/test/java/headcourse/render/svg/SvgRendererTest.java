package headcourse.render.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.Pen;
import headcourse.geom.Arc;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.testing.SamplePages;
import headcourse.text.Utf8Buffer;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** The finished SVG against the DTD of SVG 1.1 (W3C), and read back by an independent parser. */
class SvgRendererTest {
  private static final String DTD = "/org/apache/batik/dom/svg/resources/svg11-flat.dtd";

  private static Page one(Mark... marks) {
    return new Page(609.6, 457.2, "1", "One", List.of(marks), List.of());
  }

  private static List<String> problems(String svg) throws Exception {
    String dtd = SvgRendererTest.class.getResource(DTD).toString();
    String doctype =
        "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"" + dtd + "\">\n<svg xmlns=";
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    // The DTD is larger than what parsers of JDK 24 and later take unasked.
    for (String limit : List.of("totalEntitySizeLimit", "maxParameterEntitySizeLimit")) {
      factory.setAttribute("jdk.xml." + limit, "1000000");
    }
    factory.setValidating(true);
    factory.setNamespaceAware(true);
    var builder = factory.newDocumentBuilder();
    List<String> problems = new ArrayList<>();
    builder.setErrorHandler(
        new ErrorHandler() {
          @Override
          public void warning(SAXParseException e) {
            problems.add(e.getMessage());
          }

          @Override
          public void error(SAXParseException e) {
            problems.add(e.getMessage());
          }

          @Override
          public void fatalError(SAXParseException e) {
            problems.add(e.getMessage());
          }
        });
    builder.parse(new InputSource(new StringReader(svg.replaceFirst("<svg xmlns=", doctype))));
    return problems;
  }

  private static Document parsed(String svg) throws Exception {
    return new SAXSVGDocumentFactory(null)
        .createDocument("file:///sheet.svg", new StringReader(svg));
  }

  @Test
  void validByTheDtd() throws Exception {
    assertEquals(List.of(), problems(render(SamplePages.page(210, 297, "D1"), "T")));
    Page coloured = SamplePages.coloured().pages().get(0);
    assertEquals(List.of(), problems(render(coloured, "T")));
  }

  @Test
  void theCheckItselfFindsFaults() throws Exception {
    String bad = render(one(), "T").replace("<desc>", "<oops/><desc>");
    assertTrue(problems(bad).size() > 0);
  }

  @Test
  void everythingIsEscapedAndIdsAreUnique() throws Exception {
    String nasty = "<&\"'>\u0001\uD800 ]]> é";
    Mark label = new Mark.Label(new Point(9, 9), nasty, Lettering.BODY, Mark.Align.END, 30);
    Mark group = new Mark.Group(Mark.Role.STONE, "1 <&\"", nasty, List.of(label));
    String svg = render(one(group, group, group), nasty);
    assertEquals(List.of(), problems(svg));
    Document d = parsed(svg);
    assertEquals("<&\"'>   ]]> é", d.getElementsByTagName("text").item(0).getTextContent());
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < d.getElementsByTagName("g").getLength(); i++) {
      ids.add(((Element) d.getElementsByTagName("g").item(i)).getAttribute("id"));
    }
    assertEquals(List.of("", "_1____", "_1____-2", "_1____-3"), ids);
  }

  /** 3/4 in to the foot, 96 in are 6.000 in on paper; 1:10, 2438.4 mm are 243.84 mm. */
  @ParameterizedTest
  @CsvSource({"2438.4, 16, 152.4", "2438.4, 10, 243.84"})
  void linesAreTrueToScale(double real, double scale, double paper) throws Exception {
    Path line = Path.through(new Point(20, 300), new Point(20 + real / scale, 300));
    Element root = parsed(render(one(new Mark.Stroke(line, Pen.EDGE)), "T")).getDocumentElement();
    assertEquals("609.6mm", root.getAttribute("width"));
    assertEquals("457.2mm", root.getAttribute("height"));
    assertEquals("0 0 609.6 457.2", root.getAttribute("viewBox"));
    String d = ((Element) root.getElementsByTagName("path").item(0)).getAttribute("d");
    String[] numbers = d.substring(1).split("[ L]");
    assertEquals(paper, Double.parseDouble(numbers[2]) - Double.parseDouble(numbers[0]), 0.00011);
  }

  @Test
  void arcsRunTheRightWay() {
    Path quarter = new Path(List.of(new Arc(new Point(0, 0), 10, 0, Math.PI / 2)), false);
    assertEquals("M10 0A10 10 0 0 1 0 10", data(quarter));
    Path back = new Path(List.of(new Arc(new Point(0, 0), 10, 0, -Math.PI / 2)), false);
    assertEquals("M10 0A10 10 0 0 0 0 -10", data(back));
    Path whole = new Path(List.of(new Arc(new Point(0, 0), 10, 0, 2 * Math.PI)), true);
    assertEquals(3, data(whole).chars().filter(c -> c == 'A').count());
  }

  private static String render(Page page, String title) {
    return new String(SvgRenderer.render(page, title), StandardCharsets.UTF_8);
  }

  private static String data(Path path) {
    Utf8Buffer out = new Utf8Buffer(64);
    new PathData(out).put(path);
    return out.toString();
  }
}
