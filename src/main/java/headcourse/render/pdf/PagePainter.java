package headcourse.render.pdf;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.geom.Box;
import headcourse.geom.Point;
import headcourse.text.Face;
import headcourse.text.SecondLanguage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/** Paints the marks of one page, tagged and sorted into layers. */
final class PagePainter implements AutoCloseable {
  private static final COSName SPAN = COSName.getPDFName("Span");

  private final Document document;
  private final PDPageContentStream out;
  private final PaperSpace space;
  private final Tags tags;
  private final Ink ink;
  private final Predicate<String> leadsSomewhere;
  private final List<Link> links = new ArrayList<>();

  /** A link and its element of the structure. */
  record Link(Mark.Link mark, PDStructureElement element) {}

  /**
   * A painter.
   *
   * @param leadsSomewhere whether an anchor is in the document; other links are left out
   */
  PagePainter(Document document, Page page, PDPage sheet, Predicate<String> leadsSomewhere)
      throws IOException {
    this.document = document;
    this.leadsSomewhere = leadsSomewhere;
    this.space = PaperSpace.of(page);
    this.out = new PDPageContentStream(document.file(), sheet, AppendMode.OVERWRITE, true);
    PDStructureElement section = document.structure().section(page.title());
    this.tags = new Tags(out, document, section, sheet, space, page.title());
    this.ink = new Ink(out, space);
  }

  void paint(List<Mark> marks) throws IOException {
    for (Mark m : marks) {
      paint(m, null, Ink.NO_COLOUR);
    }
    tags.close();
  }

  @Override
  public void close() throws IOException {
    out.close();
  }

  List<Link> links() {
    return links;
  }

  List<PDStructureElement> parents() {
    return tags.parents();
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
      ink.stroke(s.path(), s.pen(), rgb);
    } else if (mark instanceof Mark.Fill f) {
      tags.vector(layer);
      ink.fill(f.path(), f.shade().grey(), rgb);
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

  private void label(Mark.Label l, int rgb) throws IOException {
    ink.fill(0, rgb);
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
    out.beginText();
    out.setFont(document.fonts().get(face), space.length(Face.em(lettering.height())));
    float x = space.length(at.x());
    float y = space.y(at.y());
    if (l.degrees() == 0) {
      out.newLineAtOffset(x, y);
    } else {
      out.setTextMatrix(new Matrix((float) c, (float) s, (float) -s, (float) c, x, y));
    }
    for (SecondLanguage.Run run : SecondLanguage.runs(l.text())) {
      if (run.second()) {
        out.beginMarkedContent(SPAN, document.second());
      }
      out.showText(face.shown(run.text()));
      if (run.second()) {
        out.endMarkedContent();
      }
    }
    out.endText();
  }

  private void picture(Mark.Picture p) throws IOException {
    PDImageXObject image = PDImageXObject.createFromByteArray(document.file(), p.data(), p.type());
    Box b = p.box();
    out.drawImage(
        image,
        space.length(b.minX()),
        space.y(b.maxY()),
        space.length(b.width()),
        space.length(b.height()));
  }
}
