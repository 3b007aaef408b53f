package headcourse.render.svg;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.text.Face;
import java.util.Base64;
import java.util.Locale;

/**
 * Writes a page as an SVG 1.1 file in true millimetres: groups with classes, ids and titles, real
 * text, arcs as arcs. Links are left out, since the other pages are not in the file.
 */
public final class SvgRenderer {
  private static final int NO_COLOUR = -1;

  private final Xml xml;
  private final Ids ids = new Ids();
  private final boolean inline;

  private SvgRenderer(boolean inline) {
    this.inline = inline;
    this.xml = new Xml(!inline);
  }

  /**
   * The file's text.
   *
   * @param page what to draw
   * @param title what the file is called by a browser
   */
  public static String render(Page page, String title) {
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
    return "0 0 " + Figures.of(page.width()) + " " + Figures.of(page.height());
  }

  private String file(Page page, String title) {
    String w = Figures.of(page.width());
    String h = Figures.of(page.height());
    xml.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    xml.open("svg").attribute("xmlns", "http://www.w3.org/2000/svg");
    xml.attribute("xmlns:xlink", "http://www.w3.org/1999/xlink").attribute("version", "1.1");
    xml.attribute("width", w + "mm").attribute("height", h + "mm");
    xml.attribute("viewBox", box(page));
    words("title", title);
    words("desc", page.title());
    xml.open("rect").attribute("width", w).attribute("height", h).plain("fill", "#fff");
    xml.close();
    marks(page);
    xml.close();
    return xml.toString();
  }

  private void marks(Page page) {
    xml.open("g").plain("fill", "none").plain("stroke", "#000");
    xml.plain("stroke-linejoin", "round");
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
      xml.open("path").plain("d", PathData.of(f.path()));
      xml.plain("fill", rgb == NO_COLOUR ? grey(f.shade()) : colour(rgb));
      xml.plain("stroke", "none").close();
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
    xml.open("path").plain("d", PathData.of(s.path()));
    xml.number("stroke-width", pen.width());
    if (pen.pattern() != Pen.Pattern.SOLID) {
      StringBuilder dashes = new StringBuilder();
      for (double d : pen.pattern().dashes()) {
        dashes.append(dashes.length() == 0 ? "" : ",").append(Figures.of(d));
      }
      xml.plain("stroke-dasharray", dashes.toString());
    }
    if (rgb != NO_COLOUR) {
      xml.plain("stroke", colour(rgb));
    }
    xml.close();
  }

  private void label(Mark.Label l, int rgb) {
    if (l.text().isBlank()) {
      return;
    }
    double height = l.lettering().height();
    Point p = l.at();
    xml.open("text");
    xml.number("x", p.x()).number("y", p.y());
    xml.number("font-size", Face.em(height));
    if (l.lettering().bold()) {
      xml.plain("font-weight", "bold");
    }
    switch (l.align()) {
      case START -> {}
      case MIDDLE -> xml.plain("text-anchor", "middle");
      case END -> xml.plain("text-anchor", "end");
    }
    // Another font in its place must not make it run into its neighbours.
    double width = Face.of(l.lettering().bold()).width(l.text(), height);
    xml.number("textLength", width).plain("lengthAdjust", "spacingAndGlyphs");
    if (l.degrees() != 0) {
      xml.plain(
          "transform",
          "rotate("
              + Figures.of(-l.degrees())
              + " "
              + Figures.of(p.x())
              + " "
              + Figures.of(p.y())
              + ")");
    }
    xml.plain("fill", rgb == NO_COLOUR ? "#000" : colour(rgb)).plain("stroke", "none");
    xml.text(l.text()).close();
  }

  private void picture(Mark.Picture p) {
    Box b = p.box();
    xml.open("image");
    xml.number("x", b.minX()).number("y", b.minY());
    xml.number("width", b.width()).number("height", b.height());
    xml.attribute("preserveAspectRatio", "none");
    String data = Base64.getEncoder().encodeToString(p.data());
    xml.attribute("xlink:href", "data:" + p.type() + ";base64," + data).close();
  }

  private static String grey(Shade shade) {
    int n = (int) Math.round(shade.grey() * 255);
    return n == 255 ? "#fff" : colour(n << 16 | n << 8 | n);
  }

  private static String colour(int rgb) {
    StringBuilder s = new StringBuilder("#");
    for (int shift = 20; shift >= 0; shift -= 4) {
      s.append(Character.forDigit(rgb >> shift & 15, 16));
    }
    return s.toString();
  }
}
