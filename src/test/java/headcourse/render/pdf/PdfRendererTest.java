package headcourse.render.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.drawing.Pen;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.testing.PdfChecker;
import headcourse.testing.SamplePages;
import headcourse.text.Face;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The finished PDF, read back by the library's own parser. */
class PdfRendererTest {
  private static byte[] bytes(PageSet set, String seed) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRenderer.render(set, seed, out);
    return out.toByteArray();
  }

  private static PDDocument read(PageSet set) throws Exception {
    return Loader.loadPDF(bytes(set, "seed"));
  }

  private static PageSet one(double width, double height, Mark... marks) {
    Page page = new Page(width, height, "1", "One", List.of(marks), List.of());
    return new PageSet(Bundle.BENCH, "One", "", "en", "", "", List.of(page));
  }

  @Test
  void marksAndFractionsAreFoundAsText() throws Exception {
    try (PDDocument d = read(SamplePages.letter(2))) {
      String text = new PDFTextStripper().getText(d);
      for (String wanted :
          List.of(
              "Stone D1-1", "Stone D1-2", "7 15/16″", "Dust: cut wet. Ojo: piedra señalada 1/2")) {
        assertTrue(text.contains(wanted), text);
      }
    }
  }

  @Test
  void ligaturesAndUnknownCharactersDoNotSpoilText() throws Exception {
    Mark label =
        new Mark.Label(
            new Point(20, 20),
            "fillet office\tx \uD83E\uDEA8 end",
            Lettering.BODY,
            Mark.Align.START,
            0);
    try (PDDocument d = read(one(210, 297, label))) {
      assertEquals("fillet office x ? end", new PDFTextStripper().getText(d).strip());
    }
  }

  /** ISO 216; office practice. */
  @ParameterizedTest
  @CsvSource({
    "a4, 210, 297, mm",
    "a3, 297, 420, mm",
    "letter, 8.5, 11, in",
    "tabloid, 11, 17, in",
    "arch-c, 18, 24, in",
    "arch-d, 24, 36, in"
  })
  void pageBoxesAreThePaper(String name, double width, double height, String unit)
      throws Exception {
    Paper p = PaperSizes.named(name).orElseThrow();
    double point = unit.equals("in") ? 72 : 72 / 25.4;
    try (PDDocument d = read(one(p.width().mm(), p.height().mm()))) {
      PDPage page = d.getPage(0);
      for (PDRectangle box : List.of(page.getMediaBox(), page.getCropBox(), page.getTrimBox())) {
        assertEquals(width * point, box.getWidth(), 1e-3);
        assertEquals(height * point, box.getHeight(), 1e-3);
        assertEquals(0, box.getLowerLeftX());
        assertEquals(0, box.getLowerLeftY());
      }
    }
  }

  /** 3/4 in to the foot, 96 in are 6.000 in on paper; 1:10, 2438.4 mm are 243.84 mm. */
  @ParameterizedTest
  @CsvSource({"2438.4, 16, 152.4", "2438.4, 10, 243.84"})
  void linesAreTrueToScale(double real, double scale, double paper) throws Exception {
    Path line = Path.through(new Point(20, 300), new Point(20 + real / scale, 300));
    try (PDDocument d = read(one(609.6, 914.4, new Mark.Stroke(line, Pen.EDGE)))) {
      List<double[]> points = pathPoints(d.getPage(0));
      double inches = (points.get(1)[0] - points.get(0)[0]) / 72;
      assertEquals(paper / 25.4, inches, 0.0002);
      assertEquals((914.4 - 300) / 25.4, points.get(0)[1] / 72, 0.0002);
    }
  }

  /** A roll of 12 m: more units than a page may have, so the unit is larger. */
  @Test
  void aVeryLongPageKeepsItsScale() throws Exception {
    Path line = Path.through(new Point(20, 300), new Point(20 + 11000, 300));
    byte[] file = bytes(one(12000, 609.6, new Mark.Stroke(line, Pen.EDGE)), "seed");
    assertEquals(List.of(), PdfChecker.failures(file, PDFAFlavour.PDFA_2_B));
    try (PDDocument d = Loader.loadPDF(file)) {
      PDPage page = d.getPage(0);
      double point = page.getUserUnit() * 25.4 / 72;
      assertEquals(3, page.getUserUnit());
      assertEquals(12000, page.getMediaBox().getWidth() * point, 0.01);
      List<double[]> points = pathPoints(page);
      assertEquals(11000, (points.get(1)[0] - points.get(0)[0]) * point, 0.01);
    }
  }

  @Test
  void arcsStayOnTheirCircles() throws Exception {
    for (double r : new double[] {2, 60, 400, 2500}) {
      Path circle = Path.circle(new Point(0, 0), r);
      try (PDDocument d = read(one(610, 610, new Mark.Stroke(circle, Pen.EDGE)))) {
        List<double[]> p = pathPoints(d.getPage(0));
        double[] from = p.get(0);
        for (int i = 1; i + 2 < p.size(); i += 3) {
          for (double t = 0.05; t < 1; t += 0.05) {
            double x = bezier(t, from[0], p.get(i)[0], p.get(i + 1)[0], p.get(i + 2)[0]);
            double y = bezier(t, from[1], p.get(i)[1], p.get(i + 1)[1], p.get(i + 2)[1]);
            double mm = Math.hypot(x, y - 610 * 72 / 25.4) * 25.4 / 72;
            assertEquals(r, mm, 0.005);
          }
          from = p.get(i + 2);
        }
      }
    }
  }

  private static double bezier(double t, double a, double b, double c, double d) {
    double u = 1 - t;
    return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
  }

  /** The operands of m, l and c in points, by the one matrix that the page sets. */
  private static List<double[]> pathPoints(PDPage page) throws Exception {
    List<double[]> points = new ArrayList<>();
    List<Double> numbers = new ArrayList<>();
    double[] m = {1, 0, 0, 1, 0, 0};
    for (Object token : new PDFStreamParser(page).parse()) {
      if (token instanceof COSNumber n) {
        numbers.add((double) n.floatValue());
      } else if (token instanceof Operator o) {
        if (o.getName().equals("cm")) {
          m = numbers.stream().mapToDouble(v -> v).toArray();
        } else if (List.of("m", "l", "c").contains(o.getName())) {
          for (int i = 0; i < numbers.size(); i += 2) {
            double x = numbers.get(i);
            double y = numbers.get(i + 1);
            points.add(new double[] {m[0] * x + m[4], m[3] * y + m[5]});
          }
        }
        numbers.clear();
      } else {
        numbers.clear();
      }
    }
    return points;
  }

  @Test
  void glyphsStandWhereTheMetricsSay() throws Exception {
    Mark label =
        new Mark.Label(new Point(100, 50), "AVA 12′-4½″", Lettering.MARK, Mark.Align.MIDDLE, 0);
    double width = Face.BOLD.width("AVA 12′-4½″", 7);
    List<TextPosition> glyphs = new ArrayList<>();
    try (PDDocument d = read(one(210, 297, label))) {
      new PDFTextStripper() {
        @Override
        protected void writeString(String s, List<TextPosition> positions) {
          glyphs.addAll(positions);
        }
      }.getText(d);
    }
    TextPosition last = glyphs.get(glyphs.size() - 1);
    double mm = 25.4 / 72;
    assertEquals(100 - width / 2, glyphs.get(0).getXDirAdj() * mm, 0.01);
    assertEquals(100 + width / 2, (last.getXDirAdj() + last.getWidthDirAdj()) * mm, width * 0.001);
    assertEquals(50, last.getYDirAdj() * mm, 0.01);
  }

  @Test
  void sameInputSameBytes() throws Exception {
    PageSet set = SamplePages.letter(4);
    byte[] first = bytes(set, "seed");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertArrayEquals(first, bytes(set, "seed"));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    assertFalse(Arrays.equals(first, bytes(set, "other")));
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      Callable<byte[]> task = () -> bytes(set, "seed");
      for (Future<byte[]> f : threads.invokeAll(List.of(task, task, task, task))) {
        assertArrayEquals(first, f.get());
      }
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void bookmarksLabelsLinksAndLayers() throws Exception {
    try (PDDocument d = read(SamplePages.letter(3))) {
      var catalogue = d.getDocumentCatalog();
      assertArrayEquals(
          new String[] {"D1-1", "D1-2", "D1-3"},
          catalogue.getPageLabels().getLabelsByPageIndices());
      PDOutlineItem opening = catalogue.getDocumentOutline().getFirstChild();
      assertEquals("Opening D1-1", opening.getTitle());
      assertEquals("Stone D1-1", opening.getFirstChild().getTitle());
      assertEquals(d.getPage(1), opening.getNextSibling().findDestinationPage(d));
      PDAnnotationLink link = (PDAnnotationLink) d.getPage(1).getAnnotations().get(0);
      COSDictionary target =
          (COSDictionary) ((COSArray) link.getDestination().getCOSObject()).getObject(0);
      assertEquals(d.getPage(1).getCOSObject(), target);
      assertArrayEquals(
          new String[] {"Outlines", "Dimensions", "Notes"},
          catalogue.getOCProperties().getGroupNames());
      assertEquals("en", catalogue.getLanguage());
      assertEquals(
          "None", catalogue.getViewerPreferences().getCOSObject().getNameAsString("PrintScaling"));
      assertEquals("Mill <barn> & \"doors\"", d.getDocumentInformation().getTitle());
    }
  }

  @Test
  void onePairOfFontsADocument() throws Exception {
    try (PDDocument d = read(SamplePages.letter(3))) {
      COSBase first = fonts(d.getPage(0));
      assertEquals(2, ((COSDictionary) first).size());
      assertEquals(first, fonts(d.getPage(2)));
    }
  }

  private static COSBase fonts(PDPage page) {
    return page.getResources().getCOSObject().getDictionaryObject(COSName.FONT);
  }

  /** Pictures come out in their colours, whatever way the PNG stores them. */
  @Test
  void picturesShowTheirColours() throws Exception {
    try (PDDocument d = read(SamplePages.coloured())) {
      var image = new PDFRenderer(d).renderImageWithDPI(0, 254);
      for (int i = 0; i < 7; i++) {
        // The middle of the picture's first pixel, on the diagonal.
        int rgb = image.getRGB(200 + 120 * i + 3, 603) & 0xFFFFFF;
        int red = rgb >> 16;
        // A JPEG of so few pixels mixes its colours.
        int least = i == 5 ? 100 : 200;
        boolean colour = i == 0 || i == 1 || i == 4 || i == 5;
        assertTrue(!colour || red > least, i + ": " + Integer.toHexString(rgb));
        int off = image.getRGB(200 + 120 * i + 50, 603) & 0xFFFFFF;
        assertTrue(i != 1 || Math.abs((off >> 16) - 127) < 4, Integer.toHexString(off));
      }
    }
  }
}
