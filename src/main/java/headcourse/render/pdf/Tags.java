package headcourse.render.pdf;

import headcourse.drawing.Mark;
import headcourse.geom.Box;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDLayoutAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;

/**
 * Marks content of a page as it is painted: which layer it lies in, and which element of the
 * structure it belongs to. Lines outside a figure and the whole frame are artifacts.
 */
final class Tags {
  private static final PDStructureElement ARTIFACT = new PDStructureElement("Artifact", null);

  private final PDPageContentStream out;
  private final Document document;
  private final PDStructureElement section;
  private final PDPage page;
  private final String title;
  private final PaperSpace space;
  private final List<PDStructureElement> parents = new ArrayList<>();
  private final Deque<Context> contexts = new ArrayDeque<>();

  private Layer openLayer;
  private PDStructureElement openElement;

  /** What the marks of a group become. */
  private static final class Context {
    /** Where text goes; null before the first. */
    PDStructureElement text;

    /** Where lines and areas go. */
    PDStructureElement vector = ARTIFACT;

    /** The base line of the paragraph that is being written. */
    double baseLine = Double.NaN;

    /** Whether every base line makes a paragraph of its own. */
    boolean lines;

    /** The table or the row that is being written; null outside one. */
    PDStructureElement rows;
  }

  Tags(
      PDPageContentStream out,
      Document document,
      PDStructureElement section,
      PDPage page,
      PaperSpace space,
      String title) {
    this.out = out;
    this.document = document;
    this.title = title;
    this.section = section;
    this.page = page;
    this.space = space;
    contexts.push(new Context());
    contexts.peek().lines = true;
  }

  /** The elements of the page's marked contents, by number. */
  List<PDStructureElement> parents() {
    return parents;
  }

  void enter(Mark.Group g) {
    Context outer = contexts.peek();
    Context c = new Context();
    if (outer.text == ARTIFACT || outer.vector != ARTIFACT) {
      contexts.push(outer);
      return;
    }
    switch (g.role()) {
      case FRAME -> c.text = ARTIFACT;
      case FIGURE -> figure(c, g);
      case TITLE, HEADING ->
          c.text = document.structure().heading(g.role() == Mark.Role.TITLE, section);
      case NOTES -> {}
      case TABLE -> c.lines = true;
      case ROW -> {
        if (outer.rows == null) {
          outer.rows = Structure.child("Table", section);
        }
        c.rows = Structure.child("TR", outer.rows);
      }
      case HEAD_CELL -> {
        c.text = Structure.child("TH", outer.rows);
        PDTableAttributeObject column = new PDTableAttributeObject();
        column.setScope(PDTableAttributeObject.SCOPE_COLUMN);
        c.text.addAttribute(column);
      }
      case CELL -> c.text = Structure.child("TD", outer.rows);
      default -> {
        c.lines = true;
        // Full-size outlines lie on the paper by themselves.
        if (!g.title().isBlank()) {
          figure(c, g);
        }
      }
    }
    contexts.push(c);
  }

  private void figure(Context c, Mark.Group g) {
    PDStructureElement figure = Structure.child("Figure", section);
    String alt = g.title().isBlank() ? g.id() : g.title();
    figure.setAlternateDescription(alt.isBlank() ? title : alt);
    Box box = Extent.of(g);
    if (box != null) {
      PDLayoutAttributeObject layout = new PDLayoutAttributeObject();
      layout.setBBox(space.box(box));
      layout.setPlacement(PDLayoutAttributeObject.PLACEMENT_BLOCK);
      figure.addAttribute(layout);
    }
    c.text = figure;
    c.vector = figure;
  }

  void leave() {
    contexts.pop();
  }

  /** Lines, areas or pictures follow. */
  void vector(Layer layer) throws IOException {
    open(layer, contexts.peek().vector);
  }

  /** A label follows; those on one base line, or of one group of notes, make one paragraph. */
  void text(Layer layer, Mark.Label label) throws IOException {
    Context c = contexts.peek();
    double line = label.degrees() == 0 ? label.at().y() : Double.NaN;
    if (c.text == null || c.lines && !(Math.abs(line - c.baseLine) < 0.01)) {
      c.text = Structure.child("P", section);
    }
    c.baseLine = line;
    open(layer, c.text);
  }

  /** A link, in the paragraph of the text that was written last. */
  PDStructureElement link() {
    PDStructureElement text = contexts.peek().text;
    return Structure.child("Link", text == null || text == ARTIFACT ? section : text);
  }

  private void open(Layer layer, PDStructureElement element) throws IOException {
    if (openElement == element && openLayer == layer) {
      return;
    }
    close();
    if (layer != null) {
      out.beginMarkedContent(COSName.OC, document.layers().get(layer));
    }
    if (element == ARTIFACT) {
      out.beginMarkedContent(COSName.ARTIFACT);
    } else {
      int id = parents.size();
      out.beginMarkedContent(COSName.getPDFName(element.getStructureType()), id);
      parents.add(element);
      element.setPage(page);
      element.appendKid(id);
    }
    openLayer = layer;
    openElement = element;
  }

  /** Ends what is open. */
  void close() throws IOException {
    if (openElement != null) {
      out.endMarkedContent();
      if (openLayer != null) {
        out.endMarkedContent();
      }
      openElement = null;
      openLayer = null;
    }
  }
}
