package headcourse.render.pdf;

import headcourse.drawing.Mark;
import headcourse.geom.Box;
import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;

/**
 * Marks content of a page as it is painted: which layer it lies in, and which element of the
 * structure it belongs to. Lines outside a figure and the whole frame are artifacts.
 */
final class Tags {
  private static final COSDictionary ARTIFACT = new COSDictionary();
  private static final byte[] IS_ARTIFACT = Content.words("/Artifact BMC\n");
  private static final byte[] NAME = Content.words("/");
  private static final byte[] IS_CONTENT = Content.words(" <</MCID ");
  private static final byte[] CONTENT = Content.words(" >> BDC\n");
  private static final byte[] END = Content.words("EMC\n");
  private static final byte[] ENDS = Content.words("EMC EMC\n");

  private final Content out;
  private final Structure structure;
  private final COSDictionary section;
  private final COSDictionary page;
  private final String title;
  private final PaperSpace space;
  private final COSArray parents = new COSArray();
  private final Deque<Context> contexts = new ArrayDeque<>();

  private Layer openLayer;
  private COSDictionary openElement;

  /** What the marks of a group become. */
  private static final class Context {
    /** Where text goes; null before the first. */
    COSDictionary text;

    /** Where lines and areas go. */
    COSDictionary vector = ARTIFACT;

    /** The base line of the paragraph that is being written. */
    double baseLine = Double.NaN;

    /** Whether every base line makes a paragraph of its own. */
    boolean lines;

    /** The table or the row that is being written; null outside one. */
    COSDictionary rows;
  }

  Tags(
      Content out,
      Structure structure,
      COSDictionary section,
      COSDictionary page,
      PaperSpace space,
      String title) {
    this.out = out;
    this.structure = structure;
    this.title = title;
    this.section = section;
    this.page = page;
    this.space = space;
    contexts.push(new Context());
    contexts.peek().lines = true;
  }

  COSArray parents() {
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
      case TITLE, HEADING -> c.text = structure.heading(g.role() == Mark.Role.TITLE, section);
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
        c.text.setItem(COSName.A, columnHead());
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
    COSDictionary figure = Structure.child("Figure", section);
    String alt = g.title().isBlank() ? g.id() : g.title();
    figure.setItem(COSName.ALT, Cos.text(alt.isBlank() ? title : alt));
    Box box = Extent.of(g);
    if (box != null) {
      figure.setItem(COSName.A, layout(box));
    }
    c.text = figure;
    c.vector = figure;
  }

  private static COSDictionary columnHead() {
    COSDictionary a = new COSDictionary();
    a.setDirect(true);
    a.setItem(COSName.O, Cos.name("Table"));
    a.setItem(Cos.name("Scope"), Cos.name("Column"));
    return a;
  }

  private COSDictionary layout(Box box) {
    COSDictionary a = new COSDictionary();
    a.setDirect(true);
    a.setItem(COSName.O, Cos.name("Layout"));
    a.setItem(COSName.BBOX, space.box(box));
    a.setItem(Cos.name("Placement"), Cos.name("Block"));
    return a;
  }

  void leave() {
    contexts.pop();
  }

  /** Lines, areas or pictures follow. */
  void vector(Layer layer) {
    open(layer, contexts.peek().vector);
  }

  /** A label follows; those on one base line, or of one group of notes, make one paragraph. */
  void text(Layer layer, Mark.Label label) {
    Context c = contexts.peek();
    double line = label.degrees() == 0 ? label.at().y() : Double.NaN;
    if (c.text == null || c.lines && !(Math.abs(line - c.baseLine) < 0.01)) {
      c.text = Structure.child("P", section);
    }
    c.baseLine = line;
    open(layer, c.text);
  }

  /** A link, in the paragraph of the text that was written last. */
  COSDictionary link() {
    COSDictionary text = contexts.peek().text;
    return Structure.child("Link", text == null || text == ARTIFACT ? section : text);
  }

  private void open(Layer layer, COSDictionary element) {
    if (openElement == element && openLayer == layer) {
      return;
    }
    close();
    if (layer != null) {
      out.put(layer.start());
    }
    if (element == ARTIFACT) {
      out.put(IS_ARTIFACT);
    } else {
      int id = parents.size();
      out.put(NAME).put(element.getCOSName(COSName.S).getName());
      out.put(IS_CONTENT).count(id).put(CONTENT);
      parents.add(element);
      element.setItem(COSName.PG, page);
      Structure.add(element, COSInteger.get(id));
    }
    openLayer = layer;
    openElement = element;
  }

  /** Ends what is open. */
  void close() {
    if (openElement != null) {
      out.put(openLayer == null ? END : ENDS);
      openElement = null;
      openLayer = null;
    }
  }
}
