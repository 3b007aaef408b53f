package headcourse.render.svg;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.text.Face;
import headcourse.text.SecondLanguage;
import headcourse.text.Utf8Buffer;
import java.util.Base64;
import java.util.Locale;

/**
 * Writes a page as an SVG 1.1 file in true millimetres: groups with classes, ids and titles, real
 * text, arcs as arcs. Links are left out, since the other pages are not in the file.
 */
public final class SvgRenderer {
  private static final int NO_COLOUR = -1;
  private static final byte[] PATH = Xml.name("path");
  private static final byte[] TEXT = Xml.name("text");
  private static final byte[] D = Xml.start("d");
  private static final byte[] X = Xml.start("x");
  private static final byte[] Y = Xml.start("y");
  private static final byte[] WIDTH = Xml.start("width");
  private static final byte[] HEIGHT = Xml.start("height");
  private static final byte[] FILL = Xml.start("fill");
  private static final byte[] WHITE = Xml.whole("fill", "#fff");
  private static final byte[] BLACK = Xml.whole("fill", "#000");
  private static final byte[] STROKE = Xml.start("stroke");
  private static final byte[] NO_STROKE = Xml.whole("stroke", "none");
  private static final byte[] STROKE_WIDTH = Xml.start("stroke-width");
  private static final byte[] FONT_SIZE = Xml.start("font-size");
  private static final byte[] BOLD = Xml.whole("font-weight", "bold");
  private static final byte[] MIDDLE = Xml.whole("text-anchor", "middle");
  private static final byte[] END = Xml.whole("text-anchor", "end");
  private static final byte[] LENGTH = Xml.start("textLength");
  private static final byte[] ADJUST = Xml.whole("lengthAdjust", "spacingAndGlyphs");

  private final Xml xml;
  private final Ids ids = new Ids();
  private final boolean inline;

  private SvgRenderer(boolean inline) {
    this.inline = inline;
    this.xml = new Xml(!inline);
  }

  /**
   * The file, UTF-8.
   *
   * @param page what to draw
   * @param title what the file is called by a browser
   */
  public static byte[] render(Page page, String title) {
    return new SvgRenderer(false).file(page, title);
  }

  /**
   * UTF-8 of the page as an element to stand among others in an HTML file, as wide as its place:
   * without ids, titles and classes, so that nothing clashes.
   *
   * @param page what to draw
   * @param label what it shows, for those who have it read out
   */
  public static byte[] inline(Page page, String label) {
    SvgRenderer r = new SvgRenderer(true);
    r.xml.open("svg").attribute("viewBox", box(page)).attribute("role", "img");
    r.xml.attribute("aria-label", label);
    r.marks(page);
    return r.xml.close().toBytes();
  }

  private static String box(Page page) {
    return "0 0 " + number(page.width()) + " " + number(page.height());
  }

  private static String number(double value) {
    return new Utf8Buffer(16).number(value).toString();
  }

  private byte[] file(Page page, String title) {
    String w = number(page.width());
    String h = number(page.height());
    xml.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    xml.open("svg").attribute("xmlns", "http://www.w3.org/2000/svg");
    xml.attribute("xmlns:xlink", "http://www.w3.org/1999/xlink").attribute("version", "1.1");
    xml.attribute("width", w + "mm").attribute("height", h + "mm");
    xml.attribute("viewBox", box(page));
    words("title", title);
    words("desc", page.title());
    xml.open("rect").attribute("width", w).attribute("height", h).whole(WHITE);
    xml.close();
    marks(page);
    return xml.close().toBytes();
  }

  private void marks(Page page) {
    xml.open("g").attribute("fill", "none").attribute("stroke", "#000");
    xml.attribute("stroke-linejoin", "round");
    xml.attribute(
        "font-family", "'" + Face.family() + "', 'DejaVu Sans', 'Liberation Sans', sans-serif");
    for (Mark m : page.marks()) {
      write(m, NO_COLOUR);
    }
    xml.close();
  }

  private void words(String element, String text) {
    if (!text.isBlank()) {
      xml.open(element).text(text).close();
    }
  }

  private void write(Mark mark, int rgb) {
    if (mark instanceof Mark.Group g) {
      group(g, rgb);
    } else if (mark instanceof Mark.Coloured c) {
      write(c.mark(), c.rgb() & 0xFFFFFF);
    } else if (mark instanceof Mark.Stroke s) {
      stroke(s, rgb);
    } else if (mark instanceof Mark.Fill f) {
      xml.open(PATH).path(D, f.path());
      fill(f.shade(), rgb);
      xml.whole(NO_STROKE).close();
    } else if (mark instanceof Mark.Label l) {
      label(l, rgb);
    } else if (mark instanceof Mark.Picture p) {
      picture(p);
    }
  }

  private void group(Mark.Group g, int rgb) {
    if (inline) {
      for (Mark m : g.marks()) {
        write(m, rgb);
      }
      return;
    }
    xml.open("g").attribute("class", g.role().name().toLowerCase(Locale.ROOT));
    if (!g.id().isBlank()) {
      xml.attribute("id", ids.unique(g.id()));
    }
    words("title", g.title());
    for (Mark m : g.marks()) {
      write(m, rgb);
    }
    xml.close();
  }

  private void stroke(Mark.Stroke s, int rgb) {
    Pen pen = s.pen();
    xml.open(PATH).path(D, s.path());
    xml.number(STROKE_WIDTH, pen.width());
    if (pen.pattern() != Pen.Pattern.SOLID) {
      StringBuilder dashes = new StringBuilder();
      for (double d : pen.pattern().dashes()) {
        dashes.append(dashes.length() == 0 ? "" : ",").append(number(d));
      }
      xml.attribute("stroke-dasharray", dashes.toString());
    }
    if (rgb != NO_COLOUR) {
      xml.colour(STROKE, rgb);
    }
    xml.close();
  }

  private void label(Mark.Label l, int rgb) {
    if (l.text().isBlank()) {
      return;
    }
    double height = l.lettering().height();
    Point p = l.at();
    xml.open(TEXT);
    xml.number(X, p.x()).number(Y, p.y());
    xml.number(FONT_SIZE, Face.em(height));
    if (l.lettering().bold()) {
      xml.whole(BOLD);
    }
    switch (l.align()) {
      case START -> {}
      case MIDDLE -> xml.whole(MIDDLE);
      case END -> xml.whole(END);
    }
    // Another font in its place must not make it run into its neighbours.
    double width = Face.of(l.lettering().bold()).width(l.text(), height);
    xml.number(LENGTH, width).whole(ADJUST);
    if (l.degrees() != 0) {
      xml.attribute(
          "transform",
          "rotate(" + number(-l.degrees()) + " " + number(p.x()) + " " + number(p.y()) + ")");
    }
    if (rgb == NO_COLOUR) {
      xml.whole(BLACK);
    } else {
      xml.colour(FILL, rgb);
    }
    xml.whole(NO_STROKE);
    xml.text(SecondLanguage.plain(l.text())).close();
  }

  private void picture(Mark.Picture p) {
    Box b = p.box();
    xml.open("image");
    xml.number(X, b.minX()).number(Y, b.minY());
    xml.number(WIDTH, b.width()).number(HEIGHT, b.height());
    xml.attribute("preserveAspectRatio", "none");
    String data = Base64.getEncoder().encodeToString(p.data());
    xml.attribute("xlink:href", "data:" + p.type() + ";base64," + data).close();
  }

  private void fill(Shade shade, int rgb) {
    if (rgb != NO_COLOUR) {
      xml.colour(FILL, rgb);
    } else if (shade == Shade.WHITE) {
      xml.whole(WHITE);
    } else {
      int n = (int) Math.round(shade.grey() * 255);
      xml.colour(FILL, n << 16 | n << 8 | n);
    }
  }
}
