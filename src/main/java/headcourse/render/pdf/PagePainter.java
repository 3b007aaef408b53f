package headcourse.render.pdf;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.text.Face;
import headcourse.text.Tongue;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** Paints the marks of one page into a content stream, tagged and sorted into layers. */
final class PagePainter {
  private static final int NO_COLOUR = -1;
  private static final byte[] REGULAR = Content.words("BT /R ");
  private static final byte[] BOLD = Content.words("BT /B ");
  private static final byte[] TURNED = Content.words("Tf ");
  private static final byte[] READS = Content.words("Tm ");
  private static final byte[] CODES = Content.words("<");
  private static final byte[] SHOWN = Content.words("> Tj ");
  private static final byte[] SPOKEN = Content.words("EMC ");
  private static final byte[] END = Content.words("ET\n");

  private final Content out = new Content();
  private final byte[] second;
  private final Map<Face, Lettered> fonts;
  private final Tags tags;
  private final Page page;
  private final PaperSpace space;
  private final Predicate<String> leadsSomewhere;
  private final List<Link> links = new ArrayList<>();
  private final List<OctetStream> pictures = new ArrayList<>();
  private Pen pen;
  private double grey = -1;
  private int lineColour;
  private int fillColour;

  /** A link and its element of the structure. */
  record Link(Mark.Link mark, COSDictionary element) {}

  /**
   * A painter.
   *
   * @param second BCP 47 tag of the second language, or empty
   * @param leadsSomewhere whether an anchor is in the document; other links are left out
   */
  PagePainter(
      Page page,
      String second,
      Map<Face, Lettered> fonts,
      Structure structure,
      COSDictionary section,
      COSDictionary object,
      Predicate<String> leadsSomewhere) {
    this.page = page;
    this.second = Content.words("/Span <</Lang (" + second + ")>> BDC ");
    this.fonts = fonts;
    this.leadsSomewhere = leadsSomewhere;
    this.space = PaperSpace.of(page);
    this.tags = new Tags(out, structure, section, object, space, page.title());
  }

  /** Paints everything; gives the content stream. */
  byte[] paint() throws IOException {
    out.exact(space.scale()).number(0).number(0).exact(-space.scale());
    out.number(0).number(page.height() * space.scale()).put("cm\n1 j\n");
    state();
    for (Mark m : page.marks()) {
      paint(m, null, NO_COLOUR);
    }
    tags.close();
    return out.toBytes();
  }

  List<Link> links() {
    return links;
  }

  List<OctetStream> pictures() {
    return pictures;
  }

  COSArray parents() {
    return tags.parents();
  }

  private void state() {
    pen = null;
    grey = -1;
    lineColour = 0;
    fillColour = NO_COLOUR;
  }

  private void paint(Mark mark, Layer layer, int rgb) throws IOException {
    if (mark instanceof Mark.Group g) {
      Layer inner = Layer.of(g.role(), layer);
      tags.enter(g);
      for (Mark m : g.marks()) {
        paint(m, inner, rgb);
      }
      tags.leave();
    } else if (mark instanceof Mark.Coloured c) {
      paint(c.mark(), layer, c.rgb() & 0xFFFFFF);
    } else if (mark instanceof Mark.Stroke s) {
      tags.vector(layer);
      stroke(s, rgb);
    } else if (mark instanceof Mark.Fill f) {
      tags.vector(layer);
      fill(rgb, f.shade().grey());
      out.path(f.path()).op('f');
    } else if (mark instanceof Mark.Label l) {
      if (!l.text().isBlank()) {
        tags.text(layer, l);
        label(l, rgb);
      }
    } else if (mark instanceof Mark.Picture p) {
      tags.vector(layer);
      picture(p);
    } else if (mark instanceof Mark.Link l) {
      if (leadsSomewhere.test(l.target())) {
        links.add(new Link(l, tags.link()));
      }
    }
  }

  private void stroke(Mark.Stroke s, int rgb) {
    int colour = rgb == NO_COLOUR ? 0 : rgb;
    if (colour != lineColour) {
      lineColour = colour;
      components(colour).put("RG\n");
    }
    Pen p = s.pen();
    if (pen == null || pen.width() != p.width()) {
      out.number(p.width()).op('w');
    }
    if (pen == null || pen.pattern() != p.pattern()) {
      out.put("[ ");
      for (double d : p.pattern().dashes()) {
        out.number(d);
      }
      out.put("] 0 d\n");
    }
    pen = p;
    out.path(s.path()).op('S');
  }

  private void fill(int rgb, double shade) {
    if (rgb == NO_COLOUR) {
      if (shade != grey) {
        out.number(shade).op('g');
      }
      grey = shade;
      fillColour = NO_COLOUR;
    } else {
      if (rgb != fillColour) {
        components(rgb).put("rg\n");
      }
      grey = -1;
      fillColour = rgb;
    }
  }

  private Content components(int rgb) {
    return out.number((rgb >> 16 & 255) / 255.0)
        .number((rgb >> 8 & 255) / 255.0)
        .number((rgb & 255) / 255.0);
  }

  private void label(Mark.Label l, int rgb) {
    fill(rgb, 0);
    Lettering lettering = l.lettering();
    Face face = Face.of(lettering.bold());
    double turn = Math.toRadians(l.degrees());
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    double back =
        switch (l.align()) {
          case START -> 0;
          case MIDDLE -> face.width(l.text(), lettering.height()) / 2;
          case END -> face.width(l.text(), lettering.height());
        };
    Point at = new Point(l.at().x() - back * c, l.at().y() + back * s);
    out.put(lettering.bold() ? BOLD : REGULAR).number(Face.em(lettering.height()));
    // The page's y runs down, so the letters are turned over once more.
    out.put(TURNED).number(c).number(-s).number(-s).number(-c).point(at).put(READS);
    for (Tongue.Run run : Tongue.runs(l.text())) {
      if (run.second()) {
        out.put(second);
      }
      out.put(CODES);
      fonts.get(face).encode(run.text(), out);
      out.put(SHOWN);
      if (run.second()) {
        out.put(SPOKEN);
      }
    }
    out.put(END);
  }

  private void picture(Mark.Picture p) throws IOException {
    Box b = p.box();
    out.put("q ").number(b.width()).number(0).number(0).number(-b.height());
    out.number(b.minX()).number(b.maxY()).put("cm /P").count(pictures.size()).put(" Do Q\n");
    pictures.add(PictureObject.of(p.type(), p.data()));
  }

  /** The names that the content stream uses. */
  COSDictionary xObjects() {
    COSDictionary d = new COSDictionary();
    d.setDirect(true);
    for (int i = 0; i < pictures.size(); i++) {
      d.setItem(COSName.getPDFName("P" + i), pictures.get(i));
    }
    return d;
  }
}
